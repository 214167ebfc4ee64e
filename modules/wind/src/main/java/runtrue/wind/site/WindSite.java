package runtrue.wind.site;

/** What one standard has to know of a site. */
public sealed interface WindSite permits EurocodeSite, AsceSite, AsNzsSite {
    /** The standard with its edition. */
    String standard();
}
