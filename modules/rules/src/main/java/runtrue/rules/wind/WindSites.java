package runtrue.rules.wind;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runtrue.rules.DropSettings;
import runtrue.rules.RuleException;
import runtrue.rules.SettingsFiles;
import runtrue.wind.WindException;
import runtrue.wind.eurocode.CoefficientTables;
import runtrue.wind.eurocode.NationalParameters;
import runtrue.wind.site.AsNzsSite;
import runtrue.wind.site.AsceSite;
import runtrue.wind.site.EurocodeSite;
import runtrue.wind.site.WindSite;

/** The site of a drop by the standard that its settings name. */
final class WindSites {
    private final DropSettings settings;
    private final List<String> lacking = new ArrayList<>();
    private final List<String> assumptions = new ArrayList<>();

    private WindSites(DropSettings settings) {
        this.settings = settings;
    }

    /**
     * What came of it.
     *
     * @param lacking what is not stated, as a clause; empty when there is a site
     */
    record Found(Optional<WindSite> site, String lacking, List<String> assumptions) {}

    /** Of settings that name a standard. */
    static Found of(DropSettings settings, String standard) {
        WindSites reader = new WindSites(settings);
        try {
            Optional<WindSite> site = reader.site(standard);
            String lacking = reader.lacking.isEmpty()
                    ? ""
                    : standard + " needs " + String.join(" and ", reader.lacking) + "; state it in "
                            + SettingsFiles.NAME;
            return new Found(site, lacking, reader.assumptions);
        } catch (WindException e) {
            throw new RuleException(
                    settings.origins().getOrDefault("wind.standard", SettingsFiles.NAME) + ": " + e.getMessage(), e);
        }
    }

    private Optional<WindSite> site(String standard) {
        double velocity = needed("wind.velocity");
        return switch (standard) {
            case "EN 1991-1-4" -> eurocode(velocity);
            case "ASCE 7-16" -> asce(AsceSite.Edition.ASCE_7_16, velocity);
            case "ASCE 7-22" -> asce(AsceSite.Edition.ASCE_7_22, velocity);
            case "AS/NZS 1170.2:2011" -> asNzs(AsNzsSite.Edition.AS_NZS_2011, velocity);
            default -> asNzs(AsNzsSite.Edition.AS_NZS_2021, velocity);
        };
    }

    private Optional<WindSite> eurocode(double velocity) {
        String terrain = text("wind.terrain");
        double orography = usual("wind.orography", 1, "the orography factor is 1, level ground");
        if (!lacking.isEmpty()) {
            return Optional.empty();
        }
        List<Double> internal = Stream.of("wind.internal.highest", "wind.internal.lowest")
                .flatMap(name -> settings.si(name).stream())
                .toList();
        NationalParameters national = NationalParameters.recommended();
        CoefficientTables tables = CoefficientTables.recommended();
        for (Path file : file("wind.national.values")) {
            try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                national = national.overriddenBy(text, name(file));
            } catch (IOException e) {
                throw unreadable("wind.national.values", file, e);
            }
        }
        for (Path file : file("wind.national.coefficients")) {
            try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                tables = tables.overriddenBy(text, name(file));
            } catch (IOException e) {
                throw unreadable("wind.national.coefficients", file, e);
            }
        }
        // Asked for here, so that an unknown category is a mistake of the settings and not of a roof.
        national.roughness(terrain);
        return Optional.of(new EurocodeSite(velocity, terrain, orography, internal, national, tables));
    }

    private Optional<WindSite> asce(AsceSite.Edition edition, double velocity) {
        String exposure = text("wind.exposure");
        String enclosure = text("wind.enclosure");
        double topographic = usual("wind.topographic", 1, "Kzt is 1, level ground");
        double directionality =
                usual("wind.directionality", 0.85, "Kd is 0.85, components and cladding (table 26.6-1, from memory)");
        double elevation = usual("wind.elevation", 1, "Ke is 1, which may always be taken");
        return lacking.isEmpty()
                ? Optional.of(new AsceSite(
                        edition,
                        velocity,
                        exposure,
                        topographic,
                        directionality,
                        elevation,
                        enclosure.equals("enclosed")
                                ? AsceSite.Enclosure.ENCLOSED
                                : AsceSite.Enclosure.PARTIALLY_ENCLOSED))
                : Optional.empty();
    }

    private Optional<WindSite> asNzs(AsNzsSite.Edition edition, double velocity) {
        double internal = needed("wind.internal.highest");
        OptionalDouble external =
                settings.si("wind.external").map(OptionalDouble::of).orElse(OptionalDouble.empty());
        return lacking.isEmpty() ? Optional.of(new AsNzsSite(edition, velocity, external, internal)) : Optional.empty();
    }

    /** The value, or 0 and a note that it is lacking. */
    private double needed(String name) {
        Optional<Double> value = settings.si(name);
        if (value.isEmpty()) {
            lacking.add(name);
        }
        return value.orElse(0.0);
    }

    private String text(String name) {
        String value = settings.texts().get(name);
        if (value == null) {
            lacking.add(name);
            return "";
        }
        return value;
    }

    private double usual(String name, double value, String words) {
        Optional<Double> stated = settings.si(name);
        if (stated.isEmpty()) {
            assumptions.add("Not stated, so taken as usual: " + words + ".");
        }
        return stated.orElse(value);
    }

    /** None or one, beside the settings of the drop. */
    private List<Path> file(String name) {
        String value = settings.texts().get(name);
        return value == null ? List.of() : List.of(Path.of(settings.file()).resolveSibling(value));
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private RuleException unreadable(String name, Path file, IOException e) {
        return new RuleException(
                settings.origins().getOrDefault(name, name) + ": " + file + " cannot be read (" + e
                        + "); check its name and that it is UTF-8",
                e);
    }
}
