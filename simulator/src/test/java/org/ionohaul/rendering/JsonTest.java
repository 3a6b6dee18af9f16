package org.ionohaul.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

final class JsonTest {
    @Test
    void valuesTakeThePlacesOfTheQuestionMarks() {
        Json axis = Json.of("{\"max\": ?, \"shown\": ?}", 25, true);
        assertEquals(
                "{\"axis\": {\"max\": 25, \"shown\": true}, \"data\": [[1.5,\"a\"],[2,\"b\"]]}",
                Json.of("{\"axis\": ?, \"data\": ?}", axis, List.of(List.of(1.5, "a"), List.of(2.0, "b")))
                        .text());
    }

    @Test
    void numbersHaveFiveFiguresAndInfinityIsNull() {
        assertEquals(
                "[33.333,0.000012346,123460,-0.5,0,null,null]",
                Json.of("?", List.of(100 / 3.0, 1.23456e-5, 123456.0, -0.5, 0.0, Double.NaN, Double.POSITIVE_INFINITY))
                        .text());
    }

    @Test
    void noTextEndsTheElementOrTheStringItStandsIn() {
        assertEquals(
                "[\"\\u003c/script>\\u003c!--\\\"\\\\\\n?\"]",
                Json.of("?", List.of("</script><!--\"\\\n?")).text());
    }

    @Test
    void aMissingValueIsAnError() {
        assertThrows(IllegalArgumentException.class, () -> Json.of("{\"a\": ?, \"b\": ?}", 1));
    }
}
