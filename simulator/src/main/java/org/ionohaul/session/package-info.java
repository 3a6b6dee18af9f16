/** Takes files from dialling to hang-up, through lost links and resumption. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.session;
