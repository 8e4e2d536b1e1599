package org.espalier;

import java.util.Map;
import java.util.regex.Pattern;
import tools.jackson.databind.json.JsonMapper;

/** The screens of a signed-in session without a browser: asks the server for each as the page in the browser would. */
public final class TestScreens {

    private static final JsonMapper JSON = new JsonMapper();
    private static final Pattern SYNC = Pattern.compile("\"syncId\":(\\d+)");

    private final TestSession session;
    private final String address;
    private final String key;
    private int answered;
    private int asked;

    public TestScreens(TestSession session) {
        this.session = session;
        var page =
                JSON.readTree(session.get("?v-r=init&location=&query=").body()).at("/appConfig");
        address = "?v-r=uidl&v-uiId=" + page.get("v-uiId").asInt();
        key = page.at("/uidl/Vaadin-Security-Key").asString();
        answered = page.at("/uidl/syncId").asInt();
    }

    /** Everything the server sends to show the screen, a refusal too. */
    public String open(String route) {
        var place = Map.of("route", route, "query", "", "appShellTitle", "", "historyState", "", "trigger", "");
        var event = Map.of("type", "event", "node", 1, "event", "ui-navigate", "data", place);
        var request = Map.of("csrfToken", key, "rpc", new Object[] {event}, "syncId", answered, "clientId", asked);
        var answer = session.json(address, JSON.writeValueAsString(request)).body();
        var sync = SYNC.matcher(answer);
        if (!sync.find()) {
            throw new AssertionError("no answer for the screen " + route + ": " + answer);
        }
        answered = Integer.parseInt(sync.group(1));
        asked++;
        return answer;
    }

    /** The sign of life that an open page sends by itself; the status of its answer. */
    public int heartbeat() {
        return session.json(address.replace("uidl", "heartbeat"), "").statusCode();
    }
}
