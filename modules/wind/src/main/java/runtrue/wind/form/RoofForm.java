package runtrue.wind.form;

/** Forms of roof that the standards have zones for. */
public enum RoofForm {
    FLAT("flat roof"),
    MONO_PITCH("mono-pitch roof"),
    DUO_PITCH("duo-pitch roof"),
    /** Two slopes that fall towards each other. */
    TROUGHED("troughed duo-pitch roof"),
    HIPPED("hipped roof");

    private final String words;

    RoofForm(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
