package org.ionohaul.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A value that is taken instead of a file's.
 *
 * @param key the key's full name
 * @param value what would stand after the equals sign
 */
record Setting(String key, String value) {
    /** Reads {@code KEY=VALUE}. */
    static final class Converter implements ITypeConverter<Setting> {
        @Override
        public Setting convert(String text) {
            int equals = text.indexOf('=');
            if (equals < 1 || equals == text.length() - 1) {
                throw new TypeConversionException(
                        "\"" + text + "\" is no key with its value; write one such as near.snr=\"9 dB\"");
            }
            return new Setting(
                    text.substring(0, equals).strip(),
                    text.substring(equals + 1).strip());
        }
    }
}
