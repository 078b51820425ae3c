package contrapposto.setup;

import contrapposto.body.SolvedPose;

/** A set-up whose pose exists, with its marks. */
record Tried(Trial.Held held, Judgement judgement) {
    SetUp setUp() {
        return held.setUp();
    }

    SolvedPose.Mechanics mechanics() {
        return held.mechanics();
    }
}
