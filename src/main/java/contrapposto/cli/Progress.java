package contrapposto.cli;

import java.util.Optional;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A bar on the message stream while a run over several clients goes on and a person watches; else nothing. */
final class Progress implements AutoCloseable {
    private static final int REFRESH_MILLIS = 200;
    private static final int WIDTH = 78;

    private final Optional<ProgressBar> bar;

    private Progress(Optional<ProgressBar> bar) {
        this.bar = bar;
    }

    static Progress over(int specs, Streams streams, Voice voice) {
        if (specs < 2 || !streams.person() || voice.quiet()) {
            return new Progress(Optional.empty());
        }
        return new Progress(Optional.of(new ProgressBarBuilder().setTaskName("build").setInitialMax(specs).setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(REFRESH_MILLIS).setMaxRenderedLength(WIDTH).setConsumer(new ConsoleProgressBarConsumer(streams.err())).build()));
    }

    void step() {
        bar.ifPresent(ProgressBar::step);
    }

    @Override
    public void close() {
        bar.ifPresent(ProgressBar::close);
    }
}
