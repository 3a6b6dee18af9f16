/** Builds one replication from a scenario and runs it; the only place that wires implementations. */
@org.jspecify.annotations.NullMarked
package org.ionohaul.trial;
