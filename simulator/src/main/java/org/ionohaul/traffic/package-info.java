/** Works out how the stations of a net fare, from many trials of it, and tells it. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.traffic;
