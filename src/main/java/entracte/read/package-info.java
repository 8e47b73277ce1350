/** From the musician's YAML to the model, every piece keeping its place in the file. */
package entracte.read;
