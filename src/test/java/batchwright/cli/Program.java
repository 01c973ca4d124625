package batchwright.cli;

import java.io.File;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The program as a process of its own, as a shell starts it: with its own memory, language, user and open files. */
final class Program {
    private static final int MOST_SECONDS = 300;
    /** Starts quickly; what is tested here is not speed. */
    private static final List<String> QUICK = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto");

    private final Path here;
    private final List<String> before = new ArrayList<>();
    private final List<String> options = new ArrayList<>(QUICK);
    private String classPath = parts().stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    private String main = "batchwright.cli.Main";
    private Path input = Path.of("/dev/null");

    private Program(Path here) {
        this.here = here;
    }

    static Program in(Path here) {
        return new Program(here);
    }

    /** Options of Java, such as -Xmx64m. */
    Program with(String... more) {
        options.addAll(List.of(more));
        return this;
    }

    /** In front of the command, such as another user. */
    Program behind(String... command) {
        before.addAll(List.of(command));
        return this;
    }

    Program classPath(String other) {
        classPath = other;
        return this;
    }

    Program main(Class<?> other) {
        main = other.getName();
        return this;
    }

    Cli.Result run(String... args) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.add(Path.of(System.getProperty("java.home", ""), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-cp", classPath, main));
        command.addAll(List.of(args));
        Path out = Files.createTempFile("out", "");
        Path err = Files.createTempFile("err", "");
        try {
            Process process = new ProcessBuilder(command)
                    .directory(here.toFile())
                    .redirectInput(input.toFile())
                    .redirectOutput(Redirect.to(out.toFile()))
                    .redirectError(Redirect.to(err.toFile()))
                    .start();
            if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("does not end: " + String.join(" ", args));
            }
            return new Cli.Result(process.exitValue(), Files.readString(out), Files.readString(err));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    /** What the program is made of, copied to where everybody may read it. */
    static String copiedClassPath(Path to) throws IOException {
        List<String> copies = new ArrayList<>();
        for (Path from : parts()) {
            Path copy = to.resolve(copies.size() + (Files.isDirectory(from) ? "" : ".jar"));
            copyAll(from, copy);
            copies.add(copy.toString());
        }
        return String.join(File.pathSeparator, copies);
    }

    /** Where its classes, those of its libraries and of these tests are. */
    private static List<Path> parts() {
        return Stream.of(
                        Main.class,
                        Program.class,
                        picocli.CommandLine.class,
                        com.fasterxml.jackson.databind.ObjectMapper.class,
                        com.fasterxml.jackson.core.JsonFactory.class,
                        com.fasterxml.jackson.annotation.JsonProperty.class,
                        org.snakeyaml.engine.v2.api.lowlevel.Parse.class,
                        org.apache.commons.math3.ode.FirstOrderIntegrator.class,
                        gg.jte.TemplateOutput.class)
                .map(part ->
                        part.getProtectionDomain().getCodeSource().getLocation().toString())
                .map(location -> Path.of(URI.create(location)))
                .toList();
    }

    private static void copyAll(Path from, Path to) throws IOException {
        try (var files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path copy = from.equals(file)
                        ? to
                        : to.resolve(from.relativize(file).toString());
                Files.copy(file, copy);
                copy.toFile().setReadable(true, false);
                copy.toFile().setExecutable(true, false);
            }
        }
    }
}
