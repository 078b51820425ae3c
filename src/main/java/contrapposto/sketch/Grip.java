package contrapposto.sketch;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What a drawn hand does. */
sealed interface Grip {
    /** Closed around something. */
    record Fist() implements Grip { }

    /**
     * Flat on a surface.
     *
     * @param into    unit vector into the surface
     * @param fingers the way the fingers point
     */
    record Palm(Vector3D into, Vector3D fingers) implements Grip { }

    record Relaxed() implements Grip { }
}
