package batchwright.page;

import batchwright.app.Workspace;
import batchwright.page.guard.Visitor;
import batchwright.report.html.part.Templates;
import batchwright.report.html.web.Frame;
import batchwright.report.html.web.PageUnits;
import batchwright.report.html.web.Place;
import batchwright.report.html.web.Trouble;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** One request of somebody who was let in, and the answer to it. */
public final class Visit {
    /** Of what is typed into a field. */
    private static final int LONGEST = 4000;

    private static final String UNITS = "units";
    private static final int YEAR_SECONDS = 365 * 24 * 60 * 60;
    private static final int MOST_LINES = 60;

    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}+");

    private final Context request;
    private final Visitor visitor;
    private final PageFiles files;

    Visit(Context request, Visitor visitor, PageFiles files) {
        this.request = request;
        this.visitor = visitor;
        this.files = files;
    }

    public Visitor visitor() {
        return visitor;
    }

    public PageFiles files() {
        return files;
    }

    /** The files as they are now. */
    public Workspace workspace() {
        return files.now();
    }

    /** What was typed into a field, on one line; empty when nothing was. */
    public String field(String name) {
        return cleaned(Optional.ofNullable(request.formParam(name)).orElse(""));
    }

    /** What was typed into a field of several lines, those that say something. */
    public List<String> lines(String name) {
        return Optional.ofNullable(request.formParam(name))
                .orElse("")
                .lines()
                .map(Visit::cleaned)
                .filter(line -> !line.isEmpty())
                .limit(MOST_LINES)
                .toList();
    }

    /** What was ticked. */
    public List<String> fields(String name) {
        return request.formParams(name).stream().map(Visit::cleaned).toList();
    }

    /** A part of the path: to be looked up, never to be used. */
    public String part(String name) {
        return cleaned(request.pathParam(name));
    }

    private static String cleaned(String typed) {
        String line = CONTROL.matcher(typed).replaceAll(" ").strip();
        return line.substring(0, Math.min(LONGEST, line.length()));
    }

    /** Whether a script of the page asks, which wants the part of a page that changes, or none. */
    public boolean isByScript() {
        return "script".equals(request.header("X-Asked-By"));
    }

    /** What stands around a page. */
    public Frame frame(Place place, String heading) {
        return frame(place, heading, List.of());
    }

    public Frame frame(Place place, String heading, List<Trouble> troubles) {
        return new Frame(place, heading, visitor.token().text(), visitor.said(), troubles, visitor.isPhone(), units());
    }

    /** That this browser chose. */
    public PageUnits units() {
        return PageUnits.of(Optional.ofNullable(request.cookie(UNITS)).orElse(""));
    }

    /** From now on, in this browser. */
    public void choose(PageUnits units) {
        var cookie = new Cookie(UNITS, units.kept());
        cookie.setPath("/");
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setMaxAge(YEAR_SECONDS);
        request.cookie(cookie);
    }

    /** @param template below {@code src/main/jte/web} */
    public void show(String template, Object view) {
        request.contentType("text/html; charset=utf-8").result(Templates.render("web/" + template, view));
    }

    /** @param right whether the form that was sent was right */
    public void show(String template, Object view, boolean right) {
        if (right) {
            show(template, view);
        } else {
            showWrong(template, view);
        }
    }

    /** The same for a form that was not right. */
    public void showWrong(String template, Object view) {
        request.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(template, view);
    }

    /** What is wrong with a form that a script sent, in words. */
    public void wrong(List<Trouble> troubles) {
        request.status(HttpStatus.UNPROCESSABLE_CONTENT);
        request.result(String.join(" ", troubles.stream().map(Trouble::says).toList()));
    }

    /** To another page, after something changed, so that a reload changes nothing again. */
    public void go(String path) {
        request.redirect(path, HttpStatus.SEE_OTHER);
    }

    /** To another page, which says what was done. */
    public void go(String path, String said) {
        visitor.say(said);
        go(path);
    }

    /** Done, and nothing to show. */
    public void done() {
        request.status(HttpStatus.NO_CONTENT);
    }

    /** A file to be kept. */
    public void download(String name, String type, byte[] content) {
        request.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        request.contentType(type);
        request.result(content);
    }

    /** A picture or another thing that is part of a page. */
    public void send(String type, byte[] content) {
        request.contentType(type);
        request.result(content);
    }
}
