package org.espalier.patient;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.AccessLog;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Who;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Children: registering, finding and changing who they are. Every look is written down. */
@Service
@Transactional
public class PatientService {

    /** The most children one look at a list shows. */
    public static final int PAGE = 50;

    private static final int MOST_ALIKE = 5;

    private final JdbcChildRepository children;
    private final JdbcLimbRepository limbs;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Ids ids;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    PatientService(
            JdbcChildRepository children,
            JdbcLimbRepository limbs,
            SiteService sites,
            CurrentStaff currentStaff,
            AccessLog log,
            Ids ids,
            ApplicationEventPublisher events,
            Clock clock) {
        this.children = children;
        this.limbs = limbs;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.log = log;
        this.ids = ids;
        this.events = events;
        this.clock = clock;
    }

    /**
     * Registers a child with both limbs, the growth plates about knee and ankle, and a first visit. Sent again with the
     * same id it gives back the child that is kept.
     */
    public SaveOutcome register(SiteId site, ChildId id, ChildData data) {
        demandBorn(site, data);
        var kept = children.find(id);
        if (kept.isPresent()) {
            return new SaveOutcome.Saved(kept.get());
        }
        var holder = holder(site, id, data);
        if (holder.isPresent()) {
            return new SaveOutcome.NumberTaken(look(holder.get(), "number"));
        }
        var firstVisit = ids.next();
        children.add(id, site, data, currentStaff.find().orElse(null), clock.instant(), firstVisit);
        Stream.of(Side.RIGHT, Side.LEFT).forEach(side -> addLimb(site, id, side));
        events.publishEvent(new ChildRegistered(id, site, firstVisit));
        return new SaveOutcome.Saved(get(id));
    }

    /** Changes who the child is, unless somebody else did since the given version. */
    public SaveOutcome change(ChildId id, long version, ChildData data) {
        var kept = get(id);
        demandBorn(kept.site(), data);
        if (kept.version() != version) {
            return new SaveOutcome.ChangedMeanwhile(look(kept, "identity"));
        }
        var holder = holder(kept.site(), id, data);
        if (holder.isPresent()) {
            return new SaveOutcome.NumberTaken(look(holder.get(), "number"));
        }
        return children.change(id, version, data)
                ? new SaveOutcome.Saved(get(id))
                : new SaveOutcome.ChangedMeanwhile(look(get(id), "identity"));
    }

    /**
     * Opens a child's record; empty when there is none that the caller may see.
     *
     * @param part what of it is looked at, in a word that names nobody
     */
    public Optional<Child> open(ChildId id, String part) {
        return children.find(id).map(child -> look(child, part));
    }

    /**
     * How old a child was on a day, for a screen that has opened the child already: not written down again. Empty when
     * there is no such child that the caller may see, and for a day before birth.
     */
    @Transactional(readOnly = true)
    public Optional<Age> ageOn(ChildId id, LocalDate day) {
        return children.find(id)
                .map(Child::who)
                .filter(who -> !bornFrom(who).isAfter(day))
                .map(who -> who.ageOn(day));
    }

    /**
     * A child's sex, for a screen that has opened the child already: not written down again. Empty when it is not known
     * or there is no such child that the caller may see.
     */
    @Transactional(readOnly = true)
    public Optional<Sex> sex(ChildId id) {
        return children.find(id).map(child -> child.who().sex());
    }

    /**
     * Those of the given children that are at the hospital, in no order.
     *
     * @param list where they are shown, in a word that names nobody
     */
    public List<Child> all(SiteId site, Collection<ChildId> ids, String list) {
        return look(children.all(site, ids), list);
    }

    /** The children of a hospital, a page from the given place on. */
    public List<Child> list(SiteId site, ChildOrder order, int from) {
        return look(children.list(site, order, from, PAGE), "children");
    }

    /**
     * Children of a hospital whose name, local number or birth date is like what was typed, the nearest first.
     *
     * @param language in which month names may be typed
     */
    public List<Child> find(SiteId site, String typed, Locale language) {
        var search = ChildSearch.of(typed, language, sites.today(site));
        return search.isEmpty() ? List.of() : look(children.find(site, search, PAGE), "search");
    }

    /** Children of the hospital with a like name and a like day of birth: perhaps the same one. */
    public List<Child> alike(SiteId site, ChildData data) {
        return look(children.find(site, ChildSearch.alike(data), MOST_ALIKE), "alike");
    }

    /**
     * The child a film belongs to by what it says of itself; empty unless the local number is a child's and the birth
     * date, where the film has one, agrees.
     */
    public Optional<ChildId> match(SiteId site, String localNumber, @Nullable LocalDate birthDate) {
        return children.withNumber(site, localNumber.strip())
                .filter(child -> child.data()
                        .filter(data -> birthDate == null || data.birthDate().equals(birthDate))
                        .isPresent())
                .map(Child::id);
    }

    /** The limbs of a child with the growth plates that are followed, the right first. */
    public List<Limb> limbs(ChildId child) {
        return limbs.limbs(child);
    }

    /** The growth plate of a child, followed from now on if it was not. */
    public Physis physis(ChildId child, Side side, Bone bone, BoneEnd end) {
        limbs.addPhysis(child, side, bone, end);
        return limbs.find(child, side, bone, end)
                .orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
    }

    private static LocalDate bornFrom(Who who) {
        return switch (who) {
            case Who.Named named -> named.birthDate();
            case Who.Initialled initialled -> initialled.birthMonth().atDay(1);
        };
    }

    private void addLimb(SiteId site, ChildId child, Side side) {
        limbs.addLimb(site, child, side);
        limbs.addPhysis(child, side, Bone.FEMUR, BoneEnd.DISTAL);
        limbs.addPhysis(child, side, Bone.TIBIA, BoneEnd.PROXIMAL);
        limbs.addPhysis(child, side, Bone.TIBIA, BoneEnd.DISTAL);
    }

    private void demandBorn(SiteId site, ChildData data) {
        if (data.birthDate().isAfter(sites.today(site))) {
            throw new IllegalArgumentException("A child is born before today, not on " + data.birthDate());
        }
    }

    private Optional<Child> holder(SiteId site, ChildId id, ChildData data) {
        return Optional.ofNullable(data.localNumber())
                .flatMap(number -> children.withNumber(site, number))
                .filter(other -> !other.id().equals(id));
    }

    private Child get(ChildId id) {
        return children.find(id).orElseThrow(() -> new IllegalArgumentException("no such child: " + id));
    }

    private Child look(Child child, String part) {
        log.opened(child.ref(), part);
        return child;
    }

    private List<Child> look(List<Child> shown, String list) {
        log.listed(list, shown.stream().map(Child::ref).toList());
        return shown;
    }
}
