package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/** A hand in the film room: works with mouse and keys alone, and looks where on the screen a film pixel lies. */
final class FilmRoomHand {

    /** What a careful hand on a pixel of 0.4 mm must give back. */
    private static final double DEGREES = 0.3;

    /** Screen pixels to a film pixel at which landmarks of one knee stand apart. */
    private static final double CLOSE = 2.5;

    private static final String SCALE = "room => room.looking.stage?.placing?.scale ?? 0";
    private static final String ON_SCREEN = """
            (room, [x, y]) => {
              const box = room.shadowRoot.querySelector('.film').getBoundingClientRect();
              const [sx, sy] = room.looking.stage.placing.toScreen([x, y]);
              return [box.left + sx, box.top + sy];
            }""";
    private static final String MIDDLE = """
            room => {
              const box = room.shadowRoot.querySelector('.film').getBoundingClientRect();
              return [box.left + box.width / 2, box.top + box.height / 2];
            }""";
    private static final String FROM_CROSS = """
            (room, [x, y]) => {
              const { placing, centre } = room.looking.stage;
              const [tx, ty] = placing.toScreen([x, y]);
              const [cx, cy] = placing.toScreen(centre);
              return [tx - cx, ty - cy];
            }""";

    private final Page page;
    private final Locator room;

    FilmRoomHand(Page page) {
        this.page = page;
        room = page.locator("film-room");
    }

    /** Waits until the film stands still and whole. */
    void awaitFilm() {
        page.locator("film-room[data-tiles=settled]").waitFor();
    }

    /** Waits until the numbers belong to the points and the last change is kept. */
    void awaitSaved() {
        page.waitForFunction("""
                () => {
                  const room = document.querySelector('film-room');
                  return room.dataset.saved === 'true' && room.dataset.sent === room.dataset.answered;
                }""");
    }

    void press(String button) {
        room.getByRole(
                        AriaRole.BUTTON,
                        new Locator.GetByRoleOptions().setName(button).setExact(true))
                .first()
                .click();
    }

    /** Brings a place closer with the wheel, the pointer above it, then drags the film until it lies in the middle. */
    void wheelTo(PixelPoint place) {
        press("Whole film");
        awaitStill();
        moveTo(place);
        while (scale() < CLOSE) {
            page.mouse().wheel(0, -100);
        }
        awaitStill();
        drag(place, numbers(room.evaluate(MIDDLE)));
        awaitStill();
    }

    /** Looks closely at a place by one key, the pointer above it. */
    void lookAt(PixelPoint place) {
        moveTo(place);
        page.keyboard().press("z");
        awaitStill();
    }

    /** Back to the whole film by the same key. */
    void lookAway() {
        page.keyboard().press("z");
        awaitStill();
    }

    /** Looks closely at a place by touch: the button, then the place. */
    void touchCloser(PixelPoint place) {
        room.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Look here (Z)"))
                .tap();
        tap(place);
        awaitStill();
    }

    void tap(PixelPoint place) {
        var at = onScreen(place);
        page.touchscreen().tap(at.get(0), at.get(1));
    }

    /** Drags a landmark with a finger; what is asked meanwhile is asked with the finger still down. */
    void dragByTouch(PixelPoint from, PixelPoint to, Runnable meanwhile) {
        var start = onScreen(from);
        var end = onScreen(to);
        var finger = page.context().newCDPSession(page);
        finger.send("Input.dispatchTouchEvent", touch("touchStart", start));
        for (int step = 1; step <= 8; step++) {
            finger.send(
                    "Input.dispatchTouchEvent",
                    touch(
                            "touchMove",
                            List.of(
                                    start.get(0) + (end.get(0) - start.get(0)) * step / 8,
                                    start.get(1) + (end.get(1) - start.get(1)) * step / 8)));
        }
        meanwhile.run();
        var lifted = new JsonObject();
        lifted.addProperty("type", "touchEnd");
        lifted.add("touchPoints", new JsonArray());
        finger.send("Input.dispatchTouchEvent", lifted);
        finger.detach();
    }

    private static JsonObject touch(String type, List<Double> at) {
        var point = new JsonObject();
        point.addProperty("x", at.get(0));
        point.addProperty("y", at.get(1));
        var points = new JsonArray();
        points.add(point);
        var event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        return event;
    }

    /** Waits until the film has stood still from one picture to the next. */
    private void awaitStill() {
        page.waitForFunction("""
                () => new Promise(resolve => {
                  const at = () => String(document.querySelector('film-room').looking.stage.placing);
                  const before = at();
                  requestAnimationFrame(() => requestAnimationFrame(() => resolve(at() === before)));
                })""");
    }

    void click(PixelPoint place) {
        var at = onScreen(place);
        page.mouse().click(at.get(0), at.get(1));
    }

    /** Drags from one place of the film to another. */
    void drag(PixelPoint from, PixelPoint to) {
        drag(from, onScreen(to));
    }

    private void drag(PixelPoint from, List<Double> end) {
        moveTo(from);
        page.mouse().down();
        page.mouse().move(end.get(0), end.get(1), new Mouse.MoveOptions().setSteps(8));
        page.mouse().up();
    }

    /** Passes over steps of the guided order with the keys until it comes to a limb. */
    void keyToLimb(Side side) {
        film().focus();
        var step = room.locator("#step-title");
        while (!side.name().equalsIgnoreCase(step.getAttribute("class"))) {
            page.keyboard().press("n");
        }
    }

    private Locator film() {
        return room.getByRole(AriaRole.GROUP, new Locator.GetByRoleOptions().setName("Film."));
    }

    /** Brings a place below the cross with the arrow keys and puts the landmark there with Enter. */
    void keyTo(PixelPoint place) {
        film().focus();
        while (scale() < CLOSE) {
            page.keyboard().press("+");
        }
        keys(fromCross(place).get(0), "ArrowLeft", "ArrowRight");
        keys(fromCross(place).get(1), "ArrowUp", "ArrowDown");
        page.keyboard().press("Enter");
    }

    /** Fails unless the angles the limb was drawn with are shown again. */
    void assertAnglesOf(TestLegs legs, Side side) {
        var limb = legs.limb(side);
        assertThat(degrees("mLDFA", side)).isCloseTo(limb.mLDFA().degrees(), within(DEGREES));
        assertThat(degrees("mMPTA", side)).isCloseTo(limb.mMPTA().degrees(), within(DEGREES));
        assertThat(degrees("HKA", side)).isCloseTo(Math.abs(limb.hipKneeAnkle().degrees()), within(DEGREES));
    }

    /** The size of the angle shown. */
    private double degrees(String quantity, Side side) {
        var text = room.locator("td[data-quantity='" + quantity + "'][data-side='" + side + "'] .value")
                .innerText();
        return Double.parseDouble(text.substring(0, text.indexOf('°')));
    }

    private void keys(double distance, String less, String more) {
        var key = distance < 0 ? less : more;
        long left = Math.round(Math.abs(distance));
        times(left / 100, "Shift+" + key);
        times(left % 100 / 10, key);
        times(left % 10, "Alt+" + key);
    }

    private void times(long count, String key) {
        for (long i = 0; i < count; i++) {
            page.keyboard().press(key);
        }
    }

    private void moveTo(PixelPoint place) {
        var at = onScreen(place);
        page.mouse().move(at.get(0), at.get(1));
    }

    private double scale() {
        return ((Number) room.evaluate(SCALE)).doubleValue();
    }

    private List<Double> onScreen(PixelPoint place) {
        return numbers(room.evaluate(ON_SCREEN, List.of(place.x(), place.y())));
    }

    private List<Double> fromCross(PixelPoint place) {
        return numbers(room.evaluate(FROM_CROSS, List.of(place.x(), place.y())));
    }

    private static List<Double> numbers(Object evaluated) {
        return ((List<?>) evaluated)
                .stream().map(number -> ((Number) number).doubleValue()).toList();
    }
}
