package runtrue.rules.wind;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import runtrue.rules.DropSettings;
import runtrue.rules.Quantity;
import runtrue.rules.RuleException;
import runtrue.rules.SettingsFiles;
import runtrue.wind.GivenPressures;
import runtrue.wind.site.WindSite;

/**
 * What a drop's settings say of wind. Nothing of a standard is read unless they name one.
 *
 * @param standard whether they name a standard
 * @param site of that standard; absent when something that it needs is not stated
 * @param noSite what that is, as a clause; empty when there is a site
 * @param assumptions values that were not stated and have a usual one, a sentence each
 * @param given pressures that the project's engineer gives; absent when none are
 * @param loadFactor on pressures worked out by a standard
 * @param form of roofs whose planes do not tell it
 * @param parapet height around flat roofs, metres
 * @param buildingHeight of the highest ridge above ground, metres
 * @param eavesHeight of the lowest eaves of the roof that has this ridge, metres
 */
public record WindSetting(
        boolean standard,
        Optional<WindSite> site,
        String noSite,
        List<String> assumptions,
        Optional<GivenPressures> given,
        OptionalDouble loadFactor,
        Optional<String> form,
        OptionalDouble parapet,
        OptionalDouble buildingHeight,
        OptionalDouble eavesHeight) {
    /** Standards by the names that settings have for them. */
    public static final List<String> STANDARDS =
            List.of("EN 1991-1-4", "ASCE 7-16", "ASCE 7-22", "AS/NZS 1170.2:2011", "AS/NZS 1170.2:2021");

    /** Words for how open a building is. */
    public static final List<String> ENCLOSURES = List.of("enclosed", "partially enclosed");

    /** Words for forms of roofs. */
    public static final List<String> FORMS = List.of("flat", "mono-pitch", "duo-pitch", "troughed", "hipped");

    /** What the names of given pressures begin with. */
    public static final String GIVEN_ZONES = "wind.given.zones.";

    private static final String SHORT = "uplift.";

    public WindSetting {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Of a drop.
     *
     * @throws RuleException for a site that the standard knows nothing of, or a national file that cannot be read
     */
    public static WindSetting of(DropSettings settings) {
        String standard = settings.texts().get("wind.standard");
        WindSites.Found found = standard != null
                ? WindSites.of(settings, standard)
                : new WindSites.Found(
                        Optional.empty(), "wind.standard is not stated in " + SettingsFiles.NAME, List.of());
        return new WindSetting(
                standard != null,
                found.site(),
                found.lacking(),
                found.assumptions(),
                given(settings),
                optional(settings, "wind.load_factor"),
                Optional.ofNullable(settings.texts().get("wind.form")),
                optional(settings, "wind.parapet"),
                optional(settings, "building_height"),
                optional(settings, "wind.eaves_height"));
    }

    /** Whether zones are strips along the outline: where no standard draws others. */
    boolean byPlace() {
        return given.map(g -> g.zones().keySet().stream().allMatch(Places::isPlace))
                .orElse(!standard);
    }

    private static Optional<GivenPressures> given(DropSettings settings) {
        Map<String, GivenPressures.Given> zones = new TreeMap<>();
        String from = "";
        for (Map.Entry<String, Quantity> value : new TreeMap<>(settings.values()).entrySet()) {
            for (String prefix : List.of(SHORT, GIVEN_ZONES)) {
                if (value.getKey().startsWith(prefix)) {
                    zones.put(
                            value.getKey().substring(prefix.length()),
                            new GivenPressures.Given(value.getValue().si(), OptionalDouble.empty()));
                    from = from.isEmpty() ? origin(settings, value.getKey()) : from;
                }
            }
        }
        String document = settings.texts().get("wind.given.reference");
        String reference = document == null ? from : document + ", " + from;
        return zones.isEmpty()
                ? Optional.empty()
                : Optional.of(new GivenPressures(reference, optional(settings, "wind.given.strip"), zones));
    }

    /** File and line; the folder is another on every machine. */
    static String origin(DropSettings settings, String name) {
        String origin = settings.origins().getOrDefault(name, SettingsFiles.NAME);
        return origin.substring(Math.max(origin.lastIndexOf('/'), origin.lastIndexOf('\\')) + 1);
    }

    private static OptionalDouble optional(DropSettings settings, String name) {
        return settings.si(name).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
