package org.espalier.access.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.select.Select;
import java.time.LocalDate;
import java.util.Arrays;
import org.espalier.access.Membership;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.access.StaffMember;
import org.espalier.access.StaffService;
import org.espalier.kit.DateEntryField;
import org.espalier.kit.Texts;

/** Gives somebody a role at a hospital, from a day and, if so wished, until a day. */
final class RoleDialog extends Dialog {

    private final Select<Site> site = new Select<>();
    private final Select<Role> role = new Select<>();
    private final DateEntryField from;
    private final DateEntryField until;

    RoleDialog(StaffService staff, SiteService sites, StaffMember member, Runnable done) {
        setHeaderTitle(Texts.text("access.role.give.to", member.name()));
        site.setLabel(Texts.text("access.site"));
        site.setItems(sites.all());
        site.setItemLabelGenerator(Site::name);
        role.setLabel(Texts.text("access.role"));
        role.setItems(
                Arrays.stream(Role.values()).filter(one -> one != Role.ARCHIVE).toList());
        role.setItemLabelGenerator(Texts::of);
        var chosen = site.getListDataView().getItems().findFirst();
        chosen.ifPresent(site::setValue);
        LocalDate today = chosen.map(one -> sites.today(one.id())).orElse(LocalDate.EPOCH);
        from = new DateEntryField(Texts.text("access.role.from"), () -> today);
        from.setValue(today);
        until = new DateEntryField(Texts.text("access.role.until"), () -> today);
        add(site, role, from, until);
        addClassName("admin-form");
        getFooter()
                .add(
                        new Button(Texts.text("access.cancel"), click -> close()),
                        new Button(Texts.text("access.role.give"), click -> give(staff, member, done)));
    }

    private void give(StaffService staff, StaffMember member, Runnable done) {
        boolean siteFits = Fields.check(site, !site.isEmpty(), "access.site.missing");
        boolean roleFits = Fields.check(role, !role.isEmpty(), "access.role.missing");
        var first = from.getValue();
        var last = until.getValue();
        boolean fromFits = Fields.check(from, first != null, "access.role.from.missing");
        boolean untilFits =
                Fields.check(until, last == null || first == null || !last.isBefore(first), "access.role.until.wrong");
        if (first != null && siteFits && roleFits && fromFits && untilFits) {
            staff.give(member.id(), new Membership(site.getValue().id(), role.getValue(), first, last));
            close();
            done.run();
        }
    }
}
