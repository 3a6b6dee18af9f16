package org.ionohaul.trial;

import org.ionohaul.channel.Reception;
import org.ionohaul.channel.Sky;
import org.ionohaul.link.ModeSpec;

/**
 * How two stations hear each other in one mode under one sky: one session, or several one after another. Belongs to one thread.
 *
 * @param sky what is above both
 * @param spec what they work, with bursts of their own
 * @param atNear how the near end hears the far one
 * @param atFar how the far end hears the near one
 */
record ModeUnderSky(Sky sky, ModeSpec spec, Reception atNear, Reception atFar) {}
