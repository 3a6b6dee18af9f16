package org.ionohaul.picture;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A picture as a page has it, twice, of which the page shows that which suits its place.
 *
 * @param narrow for phones; where all its shapes say the same as those of the other, their words are left out, and the page's
 *     script takes them from there
 * @param wide for more room
 */
public record Drawings(String narrow, String wide) {
    private static final Pattern SAYS = Pattern.compile("<title>[^<]*</title>");

    /** Returns the drawings of a picture. */
    public static Drawings of(Picture picture) {
        String narrow = picture.svg(Picture.NARROW);
        String wide = picture.svg(picture.wide());
        return new Drawings(
                said(narrow).equals(said(wide)) ? SAYS.matcher(narrow).replaceAll("<title/>") : narrow, wide);
    }

    /** Returns whether any of its shapes says something when pointed at. */
    public boolean isTelling() {
        return SAYS.matcher(wide).find();
    }

    private static List<String> said(String drawing) {
        return SAYS.matcher(drawing).results().map(MatchResult::group).toList();
    }
}
