package contrapposto.compose;

import freemarker.core.ArithmeticEngine;
import freemarker.core._CoreAPI;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.Version;
import java.io.IOException;
import java.util.Collections;
import java.util.Locale;
import java.util.Set;
import java.util.WeakHashMap;

/**
 * A configuration whose templates stop when their thread is interrupted: at every directive that can repeat, and at every
 * sum or comparison. What could run on between those, ranges and text made into code, is refused before it runs.
 */
final class Interruptible extends Configuration {
    private final Set<Template> checked = Collections.newSetFromMap(new WeakHashMap<>());

    Interruptible(Version version) {
        super(version);
        setArithmeticEngine(new Checked());
    }

    /** Every way to a template leads here: from outside, by {@code include} and by {@code import}. */
    @Override
    public Template getTemplate(String name, Locale locale, Object condition, String encoding, boolean parse, boolean ignoreMissing) throws IOException {
        Template template = super.getTemplate(name, locale, condition, encoding, parse, ignoreMissing);
        synchronized (checked) {
            if (template != null && checked.add(template)) {      // null only where missing ones are ignored
                Unbounded.check(name, template.toString());
                _CoreAPI.addThreadInterruptedChecks(template);
            }
        }
        return template;
    }

    /** Thrown out of a template that must stop. */
    static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private static final class Checked extends ArithmeticEngine {
        private final ArithmeticEngine exact = ArithmeticEngine.BIGDECIMAL_ENGINE;

        private ArithmeticEngine going() {
            if (Thread.currentThread().isInterrupted()) {
                throw new Stopped();
            }
            return exact;
        }

        @Override
        public int compareNumbers(Number first, Number second) throws TemplateException {
            return going().compareNumbers(first, second);
        }

        @Override
        public Number add(Number first, Number second) throws TemplateException {
            return going().add(first, second);
        }

        @Override
        public Number subtract(Number first, Number second) throws TemplateException {
            return going().subtract(first, second);
        }

        @Override
        public Number multiply(Number first, Number second) throws TemplateException {
            return going().multiply(first, second);
        }

        @Override
        public Number divide(Number first, Number second) throws TemplateException {
            return going().divide(first, second);
        }

        @Override
        public Number modulus(Number first, Number second) throws TemplateException {
            return going().modulus(first, second);
        }

        @Override
        public Number toNumber(String text) {
            return exact.toNumber(text);
        }
    }
}
