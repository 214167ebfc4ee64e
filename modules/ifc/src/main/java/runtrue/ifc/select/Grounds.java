package runtrue.ifc.select;

/** On what grounds an element was chosen, surest first; the sentence beside it says what exactly was found. */
public enum Grounds {
    /** The model types it so, by class and predefined type. */
    TYPED,
    /** It is a part of something that was chosen. */
    PART,
    /** A property or a classification says so. */
    STATED,
    /** Its name says so. */
    NAMED,
    /** Its class alone allows it; what it is must follow from where it lies. */
    CLASS
}
