/** Says which value of a rule is out of range, and what is demanded of it. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.limits;
