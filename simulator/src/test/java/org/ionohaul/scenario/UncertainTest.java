package org.ionohaul.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tomlj.Toml;
import org.tomlj.TomlArray;

final class UncertainTest {
    private static final Kind<Uncertain> RATIO = Kind.uncertain(Dimension.RATIO);

    @Test
    void plainNumbersAreKnown() throws WrongValue {
        assertEquals(new Uncertain.Known(12), RATIO.read("12 dB"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 dB ± 3 dB", "12 dB +- 3 dB", "12 dB +/- 3 dB", "12 dB±3 dB", "12 ± 3 dB", "12 dB ± 3"})
    void aNormalErrorMayBeWrittenInSeveralWays(String text) throws WrongValue {
        assertEquals(new Uncertain.Normal(12, 3), RATIO.read(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-9 dB .. 15 dB",
                "-9 dB ... 15 dB",
                "-9 dB … 15 dB",
                "-9 dB..15 dB",
                "-9..15 dB",
                "-9 dB to 15 dB",
                "-9–15 dB"
            })
    void aRangeMayBeWrittenInSeveralWays(String text) throws WrongValue {
        assertEquals(new Uncertain.Range(-9, 15), RATIO.read(text));
    }

    @Test
    void weightedValuesAreAListOfTables() throws WrongValue {
        assertEquals(
                new Uncertain.Weighted(List.of(9.0, 15.0), List.of(1.0, 3.0)),
                RATIO.read(listed("[{ value = '9 dB', weight = 1 }, { value = '15 dB', weight = 3 }]")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "['9 dB']",
                "[{ value = '9 dB' }]",
                "[{ value = '9 dB', weight = 0 }]",
                "[{ value = '9 dB', weight = nan }]",
                "[{ value = '9 dB', weight = inf }]",
                "[{ value = '9', weight = 1 }]"
            })
    void listsThatAreNotWeightedValuesAreRefused(String list) {
        assertThrows(WrongValue.class, () -> RATIO.read(listed(list)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 dB ± 0 dB", "12 dB ± -3 dB", "12 dB ± 3 Hz", "15 dB .. 9 dB", "9 dB .. 9 dB", "± 3 dB"})
    void whatIsNoDistributionIsRefused(String text) {
        assertThrows(WrongValue.class, () -> RATIO.read(text));
    }

    /** Standard normal table: 0.8413 below +1; cut at 3 either way, (0.84134 - 0.00135) / 0.99730 = 0.84227 below +1. */
    @Test
    void aNormalErrorIsCutOffAtThreeStandardDeviations() {
        Uncertain normal = new Uncertain.Normal(12, 3);
        assertEquals(12, normal.quantile(0.5), 1e-9);
        assertEquals(15, normal.quantile(0.84227), 1e-3);
        assertEquals(21, normal.quantile(1 - 1e-12), 1e-6);
        assertEquals(3, normal.quantile(1e-12), 1e-6);
    }

    @Test
    void aRangeIsEven() {
        assertEquals(3, new Uncertain.Range(-9, 15).quantile(0.5));
        assertEquals(9, new Uncertain.Range(-9, 15).quantile(0.75));
    }

    @Test
    void aWeightedValueTurnsUpByItsWeight() {
        Uncertain weighted = new Uncertain.Weighted(List.of(9.0, 15.0), List.of(1.0, 3.0));
        assertEquals(9, weighted.quantile(0.2499));
        assertEquals(15, weighted.quantile(0.2501));
    }

    private static Object listed(String list) {
        TomlArray array = Toml.parse("list = " + list).getArray("list");
        return array == null ? List.of() : array.toList();
    }
}
