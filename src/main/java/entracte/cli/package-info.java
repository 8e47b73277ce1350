/** The commands: files, exit codes and the wiring of everything else. */
package entracte.cli;
