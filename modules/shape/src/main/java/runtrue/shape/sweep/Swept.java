package runtrue.shape.sweep;

import java.util.Optional;
import runtrue.shape.Sweep;
import runtrue.shape.mesh.Mesh;

/**
 * One swept body, in metres.
 *
 * @param straight its facts where the sweep ran along one straight line with one section
 */
public record Swept(Mesh mesh, Optional<Sweep> straight) {}
