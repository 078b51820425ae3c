package contrapposto.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A roster of clients who are held back by chest pain, so that nothing has to be solved: {@code base.yaml} and {@code all.csv}. */
final class HeldRoster {
    private HeldRoster() { }

    static void write(Path folder, int rows) throws IOException {
        Files.writeString(folder.resolve("base.yaml"), """
                format: 1
                client: {name: Invented Example, height: 171 cm, mass: 64 kg}
                assessment: {date: 2026-03-02, pelvis: {turned: right, degree: clear}}
                screening: {chest-pain: yes}
                schedule: {start: 2026-03-09, weeks: 2, days: [mon], minutes: 30}
                """);
        var roster = new StringBuilder("spec,client.code,client.height\n");
        for (int i = 1; i <= rows; i++) {
            roster.append("base.yaml,C-").append(i).append(",170 cm\n");
        }
        Files.writeString(folder.resolve("all.csv"), roster);
    }
}
