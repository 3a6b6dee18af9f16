/** Works out which run or reading on the air would sharpen a choice of modes most. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.nextrun;
