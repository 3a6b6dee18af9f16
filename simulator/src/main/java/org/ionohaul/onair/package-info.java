/** Works out what runs on the air, made one after another, can tell of modes, and plans them. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.onair;
