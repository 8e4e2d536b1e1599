package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import java.util.Map;
import java.util.stream.Collectors;
import org.espalier.access.FirstPassword;
import org.espalier.access.Membership;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SessionService;
import org.espalier.access.SignOnService;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.access.StaffMember;
import org.espalier.access.StaffService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.springframework.dao.DuplicateKeyException;

/** Who is in the network, by name, what they are where and until when; and a line to add somebody. */
final class StaffPanel extends Composite<Section> {

    private final StaffService staff;
    private final SiteService sites;
    private final SecondFactorService factors;
    private final SignOnService signOn;
    private final SessionService sessions;
    private final FoundList<StaffMember> list = new FoundList<>(
            "access.staff.find", "access.staff.others", member -> member.name() + " " + member.login(), this::line);
    private Map<SiteId, String> names = Map.of();
    private final TextField login = new TextField(Texts.text("access.staff.login"));
    private final TextField name = new TextField(Texts.text("access.staff.name"));
    private final Paragraph told = new Paragraph();

    StaffPanel(
            StaffService staff,
            SiteService sites,
            SecondFactorService factors,
            SignOnService signOn,
            SessionService sessions) {
        this.staff = staff;
        this.sessions = sessions;
        this.factors = factors;
        this.signOn = signOn;
        this.sites = sites;
        login.setHelperText(Texts.text("access.staff.login.help"));
        told.addClassName("notice");
        told.getElement().setAttribute("role", "status");
        told.setVisible(false);
        var form = new Div(login, name, new Button(Texts.text("access.staff.add"), click -> add()));
        form.addClassName("admin-form");
        getContent().addClassName("sheet");
        getContent().add(new H2(Texts.text("access.staff")), told, list, form);
        refresh();
    }

    void refresh() {
        names = sites.all().stream().collect(Collectors.toMap(Site::id, Site::name));
        list.show(staff.all());
    }

    private ListItem line(StaffMember member) {
        var roles = new UnorderedList();
        member.memberships().forEach(held -> roles.add(role(member, held, names.getOrDefault(held.site(), ""))));
        return new ListItem(who(member), roles, deeds(member));
    }

    private static Div who(StaffMember member) {
        var name = new Span(member.name());
        name.addClassName("name");
        var who = new Div(name, new Span(member.login()));
        if (member.operator()) {
            who.add(new Span(Texts.text("access.staff.operator")));
        }
        if (!member.active()) {
            var out = new Span(Texts.text("access.staff.out"));
            out.addClassName("soon");
            who.add(out);
        }
        return who;
    }

    private ListItem role(StaffMember member, Membership held, String site) {
        var until = held.until();
        var text = until == null
                ? Texts.text("access.role.held", Texts.of(held.role()), site, DateText.of(held.from()))
                : Texts.text(
                        "access.role.held-until",
                        Texts.of(held.role()),
                        site,
                        DateText.of(held.from()),
                        DateText.of(until));
        var end = new Button(Texts.text("access.role.end"), click -> {
            staff.end(member.id(), held);
            refresh();
        });
        end.setAriaLabel(Texts.text("access.role.end.of", text, member.name()));
        return new ListItem(new Span(text), end);
    }

    private Div deeds(StaffMember member) {
        var give = new Button(
                Texts.text("access.role.give"), click -> new RoleDialog(staff, sites, member, this::refresh).open());
        give.setAriaLabel(Texts.text("access.role.give.to", member.name()));
        var renew = new Button(
                Texts.text("access.staff.renew"), click -> tell(member.name(), staff.renewPassword(member.id())));
        renew.setAriaLabel(Texts.text("access.staff.renew.of", member.name()));
        var out = new Button(Texts.text(member.active() ? "access.staff.shut-out" : "access.staff.let-in"), click -> {
            if (member.active()) {
                staff.shutOut(member.id());
            } else {
                staff.letIn(member.id());
            }
            refresh();
        });
        out.setEnabled(!member.operator());
        var reset = new Button(Texts.text("access.factor.reset"), click -> {
            factors.reset(member.id());
            told.setText(Texts.text("access.factor.was-reset", member.name()));
            told.setVisible(true);
        });
        reset.setAriaLabel(Texts.text("access.factor.reset.of", member.name()));
        var deeds = new Div(give, renew, reset, endSessions(member), out);
        if (signOn.isOffered()) {
            var link = new Button(
                    Texts.text("access.sign-on"), click -> new SignOnDialog(signOn, member, this::refresh).open());
            link.setAriaLabel(Texts.text("access.sign-on.of", member.name()));
            deeds.add(link);
        }
        return deeds;
    }

    private Button endSessions(StaffMember member) {
        var end = new Button(Texts.text("access.sessions.end"), click -> {
            sessions.endAllOf(member.id());
            told.setText(Texts.text("access.sessions.ended", member.name()));
            told.setVisible(true);
        });
        end.setAriaLabel(Texts.text("access.sessions.end.of", member.name()));
        return end;
    }

    private void add() {
        boolean nameFits = Fields.check(name, !name.getValue().isBlank(), "access.staff.name.missing");
        boolean loginFits = Fields.check(
                login,
                login.getValue().strip().matches("[A-Za-z0-9][A-Za-z0-9._@-]{2,119}"),
                "access.staff.login.wrong");
        if (!(nameFits && loginFits)) {
            return;
        }
        try {
            tell(name.getValue().strip(), staff.add(login.getValue(), name.getValue()));
        } catch (DuplicateKeyException e) {
            Fields.check(login, false, "access.staff.login.taken");
            return;
        }
        login.clear();
        name.clear();
        refresh();
    }

    private void tell(String who, FirstPassword first) {
        told.setText(Texts.text("access.staff.first-password", who, first.password()));
        told.setVisible(true);
    }
}
