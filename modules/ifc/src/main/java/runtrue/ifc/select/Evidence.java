package runtrue.ifc.select;

/** Why a selector holds: on what grounds, and in words. */
record Evidence(Grounds grounds, String text) {}
