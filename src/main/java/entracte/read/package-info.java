/**
 * From the musician's YAML to the model, every piece keeping its place in the file.
 *
 * <p>A file goes through four steps. {@link entracte.read.TextFile} opens it and decodes it; {@link
 * entracte.read.TreeMaker} has SnakeYAML find its structure and makes a {@link entracte.read.Tree}
 * of it, in which every value is still the raw text that was written: YAML 1.1 would take {@code
 * 2:30} for 150, {@code no} for false and {@code 010} for eight, and none of these is what a
 * musician means. {@link entracte.read.Fields} hands out the parts of a table by name and complains
 * of names it does not know. The readers of rig, patch and set then give each value its type.
 *
 * <p>Nothing here throws for what is written in a file. Every mistake goes into the {@link
 * entracte.read.Notebook}, the broken piece is left out or read as what it most likely meant, and
 * reading goes on, so that one run shows everything there is to mend.
 */
package entracte.read;
