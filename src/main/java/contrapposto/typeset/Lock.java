package contrapposto.typeset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;

/**
 * Encrypts finished pages with AES-256 (revision 6), so that they open with one password only. Done by PDFBox: OpenPDF would need
 * a cryptography library of 8 MB for it, PDFBox takes the ciphers of the run-time.
 */
record Lock(String password) {
    private static final int BITS = 256;

    /** The same pages, encrypted; reading aloud, printing and filling in stay allowed. */
    Pages on(Pages open) {
        return new Pages(on(open.bytes()), open.count(), open.parts(), open.cards(), open.rows());
    }

    byte[] on(byte[] open) {
        try (var file = Loader.loadPDF(open)) {
            var allowed = new AccessPermission();
            allowed.setCanModify(false);
            allowed.setCanAssembleDocument(false);
            var policy = new StandardProtectionPolicy(password, password, allowed);
            policy.setEncryptionKeyLength(BITS);
            policy.setPreferAES(true);
            file.protect(policy);
            var out = new ByteArrayOutputStream(open.length);
            file.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Without the password: it is never printed. */
    @Override
    public String toString() {
        return "Lock";
    }
}
