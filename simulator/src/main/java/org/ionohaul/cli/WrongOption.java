package org.ionohaul.cli;

import org.ionohaul.scenario.WrongValue;
import picocli.CommandLine.TypeConversionException;

/** What is told of an option whose value can't be read. */
final class WrongOption {
    private WrongOption() {}

    static TypeConversionException of(WrongValue refusal) {
        return new TypeConversionException(
                refusal.remedy().isEmpty() ? refusal.message() : refusal.message() + "\n    " + refusal.remedy());
    }
}
