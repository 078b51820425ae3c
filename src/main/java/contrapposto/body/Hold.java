package contrapposto.body;

import java.util.Optional;

/** How the trunk is held while legs and pelvis stay: degrees. */
record Hold(double turn, double lean) {
    /** What an action asks of the trunk where the legs hold still; empty when it asks the legs to move. */
    static Optional<Hold> of(Action action, Position position) {
        return switch (action) {
            case Action.ArmsMove(var startTurn, var workingTurn, var lean) ->
                    Optional.of(new Hold(position.pick(startTurn, workingTurn), lean));
            case Action.Squeeze squeeze -> Optional.of(new Hold(0, 2));
            case Action.KneeBend bend -> Optional.empty();
            case Action.HipFold fold -> Optional.empty();
            case Action.HeelRise rise -> Optional.empty();
            case Action.HipLift lift -> Optional.empty();
            case Action.StepUp up -> Optional.empty();
            case Action.Shift shift -> Optional.empty();
            case Action.PressUp up -> Optional.empty();
            case Action.Walk walk -> Optional.empty();
        };
    }
}
