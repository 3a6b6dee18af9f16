/** Serves a page on this machine on which a scenario's quantities are changed while its trials come in. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.livepage;
