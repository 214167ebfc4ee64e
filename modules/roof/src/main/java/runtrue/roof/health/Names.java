package runtrue.roof.health;

import runtrue.ifc.Element;

/** Names an element within a sentence about another. */
final class Names {
    private Names() {}

    /** Class, name, number, and the file where it is not the one spoken of. */
    static String of(Element element, String file) {
        String name = element.name().isEmpty() ? "" : " \"" + element.name() + "\"";
        String where = element.file().equals(file) ? "" : " in " + element.file();
        return element.ifcClass() + name + " (#" + element.stepId() + ")" + where;
    }
}
