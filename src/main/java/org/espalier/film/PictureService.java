package org.espalier.film;

import java.io.InputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.espalier.access.AccessLog;
import org.espalier.access.ChildRef;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteService;
import org.espalier.film.PictureDoor.Entered;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** Photos of the legs and short clips of children walking, kept like films and behind the same walls. */
@Service
public class PictureService {

    private static final List<Role> KEEPERS = List.of(Role.SURGEON, Role.NURSE, Role.RADIOGRAPHER);

    private final PictureRepository pictures;
    private final PictureDoor door;
    private final Pyramids pyramids;
    private final PatientService patients;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Ids ids;
    private final Clock clock;
    private final TransactionTemplate transactions;

    PictureService(
            PictureRepository pictures,
            PictureDoor door,
            Pyramids pyramids,
            PatientService patients,
            SiteService sites,
            CurrentStaff currentStaff,
            AccessLog log,
            Ids ids,
            Clock clock,
            TransactionTemplate transactions) {
        this.pictures = pictures;
        this.door = door;
        this.pyramids = pyramids;
        this.patients = patients;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.log = log;
        this.ids = ids;
        this.clock = clock;
        this.transactions = transactions;
    }

    /**
     * Keeps a photo or clip. May be repeated without harm: the same bytes are kept once for a child. No transaction is
     * open while they come in.
     *
     * @throws IllegalArgumentException if there is no such child, or a day is still to come
     */
    public PictureReceived receive(ChildId child, InputStream bytes, LocalDate takenOn, Consent consent) {
        var whose = Objects.requireNonNull(transactions.execute(status -> patients.open(child, "pictures")))
                .orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
        if (KEEPERS.stream().noneMatch(role -> currentStaff.has(role, whose.site()))) {
            throw new AccessDeniedException("pictures are kept by those who treat the child");
        }
        demandPast(whose, takenOn);
        demandPast(whose, consent.on());
        return switch (door.enter(bytes)) {
            case Entered.Out(var problem) -> new PictureReceived.Refused(problem);
            case Entered.In in ->
                Objects.requireNonNull(transactions.execute(status -> keep(whose, in, takenOn, consent)));
        };
    }

    /** The photos and clips of a child, the latest first; those no longer shown are among them. */
    @Transactional
    public List<ClinicalPicture> of(ChildId child) {
        return pictures.of(child);
    }

    /** Opens a photo or clip; empty when there is none that the caller may see, or it is no longer shown. */
    @Transactional
    public Optional<OpenPicture> open(PictureId picture) {
        var found = pictures.find(picture).filter(one -> one.withdrawn().isEmpty());
        found.ifPresent(one ->
                log.film(new ChildRef(one.site(), one.child().value()), one.id().value()));
        return found.map(one -> new OpenPicture(one, door.file(one.bytes())));
    }

    /** Opens a photo as films are opened, so that what must not be seen can be covered in a copy; empty for a clip. */
    @Transactional
    public Optional<OpenFilm> openLarge(PictureId picture) {
        return open(picture)
                .map(OpenPicture::picture)
                .filter(one -> !one.kind().isClip())
                .map(one -> new OpenFilm(asFilm(one), pyramids));
    }

    private static Film asFilm(ClinicalPicture photo) {
        return new Film(
                new FilmId(photo.id().value()),
                photo.site(),
                Optional.of(photo.child()),
                1,
                FilmState.READY,
                FilmKind.PHOTO,
                Optional.of(photo.takenOn()),
                Optional.empty(),
                Optional.empty(),
                FilmScale.NONE,
                Optional.empty(),
                photo.bytes(),
                photo.keptAt());
    }

    /**
     * Ends the showing of a photo or clip, because consent was taken back or it is of another child. That it was kept
     * stays visible.
     *
     * @return false when somebody else ended it before
     */
    @Transactional
    public boolean withdraw(PictureId picture, String reason) {
        return pictures.withdraw(picture, reason, clock.instant());
    }

    private PictureReceived keep(Child child, Entered.In in, LocalDate takenOn, Consent consent) {
        var known = pictures.withBytes(child.id(), in.bytes().sha256());
        if (known.isPresent()) {
            return new PictureReceived.Kept(known.get().id());
        }
        var picture = new ClinicalPicture(
                new PictureId(ids.next()),
                child.site(),
                child.id(),
                in.kind(),
                in.bytes(),
                in.length(),
                takenOn,
                consent,
                currentStaff.name(),
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                Optional.empty());
        pictures.add(picture);
        return new PictureReceived.Kept(picture.id());
    }

    private void demandPast(Child child, LocalDate day) {
        if (day.isAfter(sites.today(child.site()))) {
            throw new IllegalArgumentException("No picture of a day to come: " + day);
        }
    }
}
