package runtrue.cli.words;

import java.util.Arrays;
import java.util.Map;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Makes and reads options. By hand and not by annotations, whose reading by reflection takes tens of milliseconds. */
public final class Options {
    private Options() {}

    /** An option that takes one value. */
    public static OptionSpec option(Class<?> type, String label, String description, String... names) {
        return OptionSpec.builder(names[0], Arrays.copyOfRange(names, 1, names.length))
                .type(type)
                .paramLabel(label)
                .description(description)
                .build();
    }

    /** Single settings, over those of a file. */
    public static OptionSpec overrides() {
        return OptionSpec.builder("--set")
                .paramLabel("KEY=VALUE")
                .type(Map.class)
                .auxiliaryTypes(String.class, String.class)
                .description("One setting, over those of the settings file. May be given more than once.")
                .build();
    }

    /** What was given, or else the default. */
    public static <T> T given(ArgSpec arg, T otherwise) {
        T value = arg.getValue();
        return value == null ? otherwise : value;
    }
}
