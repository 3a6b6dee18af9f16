/** Lays runs on the air beside what the simulation makes of them: where each lies, and whether the model fits. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.placing;
