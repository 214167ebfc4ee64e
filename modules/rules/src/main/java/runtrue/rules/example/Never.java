package runtrue.rules.example;

import runtrue.rules.yaml.Place;

/**
 * An outcome that a rule cannot come to, so that no example can be given.
 *
 * @param rule id
 * @param because why, as a sentence of the rule's author
 */
public record Never(String rule, Expected outcome, String because, Place place) {}
