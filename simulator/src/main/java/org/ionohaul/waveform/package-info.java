/** Says how long a burst lasts and how likely each frame in it is decoded. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.waveform;
