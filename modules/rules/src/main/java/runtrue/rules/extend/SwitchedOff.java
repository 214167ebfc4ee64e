package runtrue.rules.extend;

import runtrue.rules.yaml.Place;

/**
 * A rule of an extended rule set that is not applied.
 *
 * @param because who switched it off says why
 */
public record SwitchedOff(String rule, String title, String because, Place place) {}
