package runtrue.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The front-end's files, which stand as they are in the resources beside this class: a frame, style sheets, a script that
 * starts the modules, and the modules. The names of modules are unique, for they import each other by the last part of the
 * path.
 */
final class Front {
    private static final List<String> STYLE = List.of(
            "style/base.css",
            "style/head.css",
            "style/findings.css",
            "style/views.css",
            "style/tables.css",
            "style/print.css");

    /** In any order: a module is made when it is first imported. */
    private static final List<String> MODULES = List.of(
            "main.js",
            "dom.js",
            "words.js",
            "model.js",
            "state.js",
            "theme.js",
            "head.js",
            "findings.js",
            "filters.js",
            "detail.js",
            "viewer.js",
            "plan.js",
            "panzoom.js",
            "table.js",
            "sections.js",
            "changes.js",
            "space/scene.js",
            "space/roof.js",
            "space/surface.js",
            "space/camera.js",
            "space/signs.js");

    /** Files of the 3D library three.js, MIT licence, as published. */
    private static final List<String> LIBRARY = List.of(
            "three.core.min.js",
            "three.module.min.js",
            "OrbitControls.js",
            "LineMaterial.js",
            "LineSegments2.js",
            "LineSegmentsGeometry.js");

    private Front() {}

    /** The frame of the page, with slots. */
    static String frame() {
        return read("page.html");
    }

    /** All style sheets, one after the other. */
    static String style() {
        return STYLE.stream().map(Front::read).collect(Collectors.joining());
    }

    /** The script that starts the modules. */
    static String boot() {
        return read("boot.js");
    }

    /** A module by the last part of its path. */
    record Module(String name, String text) {}

    /** Ours, then the library with its licence. */
    static List<Module> modules() {
        return Stream.concat(
                        MODULES.stream().map(m -> new Module(m.substring(m.lastIndexOf('/') + 1), read(m))),
                        LIBRARY.stream().map(m -> new Module(m, read("three/" + m))))
                .toList();
    }

    /** The licence of the library. */
    static String licence() {
        return read("three/LICENSE");
    }

    private static String read(String file) {
        try (InputStream in = Front.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
