/** Parses the command line, prints, sets the exit code. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.cli;
