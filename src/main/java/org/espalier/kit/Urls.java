package org.espalier.kit;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** Where each screen is. Screens link to each other by these alone. */
public final class Urls {

    public static final String TODAY = "";
    public static final String CHILDREN = "children";
    public static final String NEW_CHILD = "children/new";
    public static final String FILMS = "films";
    public static final String RECALL = "recall";
    public static final String LIMITS = "limits";
    public static final String BOOKINGS = "bookings";
    public static final String BRING_IN = "bring-in";
    public static final String RATES = "rates";
    public static final String WORKLIST = "worklist";
    public static final String PATELLA_CARD = "worklist/patella";
    public static final String READERS = "readers";
    public static final String STOCK = "stock";
    public static final String STOCK_SHELF = "stock/shelf";
    public static final String STOCK_MOVE = "stock/move";
    public static final String STOCK_PRODUCTS = "stock/products";
    public static final String STOCK_PRODUCT = "stock/product";
    public static final String STOCK_LOT = "stock/lot";
    public static final String STOCK_NEEDS = "stock/needs";
    public static final String SAFETY = "safety";
    public static final String SAFETY_NOTICE = "safety/notice";
    public static final String SAFETY_INCIDENTS = "safety/incidents";
    public static final String SAFETY_INCIDENT = "safety/incident";
    public static final String OPINIONS = "opinions";
    public static final String OPINION_PANELS = "opinions/panels";
    public static final String COSTS = "costs";
    public static final String COSTS_TARIFFS = "costs/tariffs";
    public static final String COSTS_EPISODES = "costs/episodes";
    public static final String COSTS_PATHWAYS = "costs/pathways";
    public static final String COSTS_BUDGET = "costs/budget";
    public static final String COSTS_ACCOUNT = "costs/account";
    public static final String OUTCOMES = "outcomes";
    public static final String OUTCOMES_FORECASTS = "outcomes/forecasts";
    public static final String OUTCOMES_PLATES = "outcomes/plates";
    public static final String ADMINISTRATION = "admin";
    public static final String EMERGENCY = "emergency";
    public static final String EMERGENCIES = "admin/emergencies";
    public static final String THEATRE = "theatre";
    public static final String LOGIN = "login";

    private Urls() {}

    /** The course of a child. */
    public static String course(UUID child) {
        return "course/" + child;
    }

    /** Who the child is: the form to change it. */
    public static String editChild(UUID child) {
        return "child/" + child + "/edit";
    }

    /** Who looked at the child's record. */
    public static String whoSaw(UUID child) {
        return "child/" + child + "/seen";
    }

    /** What was measured and found on the child. */
    public static String examination(UUID child) {
        return "child/" + child + "/examination";
    }

    /** When to look at the child again, and how to reach the family. */
    public static String visits(UUID child) {
        return "child/" + child + "/visits";
    }

    /** Where the child's limbs are going. */
    public static String prognosis(UUID child) {
        return "child/" + child + "/prognosis";
    }

    /** What could be done about the child's limbs. */
    public static String plan(UUID child) {
        return "child/" + child + "/plan";
    }

    /** The same of one limb, by the word of its side. */
    public static String plan(UUID child, String limb) {
        return plan(child) + "?limb=" + limb;
    }

    /** A sheet of the planning desk for one limb. */
    public static String planSheet(UUID child, String sheet, String limb) {
        return planPage(child, sheet) + "?limb=" + limb;
    }

    /** The same without saying which limb. */
    public static String planPage(UUID child, String sheet) {
        return plan(child) + "/" + sheet;
    }

    /** Two films of one child side by side. */
    public static String compare(UUID film, UUID other) {
        return "compare/" + film + "/" + other;
    }

    /** What was done to the child's limbs and is meant to be done. */
    public static String treatment(UUID child) {
        return "child/" + child + "/treatment";
    }

    /** The form that records a procedure. */
    public static String recordProcedure(UUID child) {
        return treatment(child) + "/record";
    }

    /** The theatre list of a day. */
    public static String theatre(LocalDate day) {
        return THEATRE + "?day=" + day;
    }

    /** What is asked before and after an operation. */
    public static String theatreCheck(UUID child) {
        return treatment(child) + "/check";
    }

    /** A shelf and what lies on it. */
    public static String stockShelf(UUID shelf) {
        return STOCK_SHELF + "?shelf=" + shelf;
    }

    /** A product of the catalogue and where it lies. */
    public static String stockProduct(UUID product) {
        return STOCK_PRODUCT + "?product=" + product;
    }

    /** A lot, where it lies and where it went. */
    public static String stockLot(UUID lot) {
        return STOCK_LOT + "?lot=" + lot;
    }

    /** A safety notice and how far it has been told. */
    public static String safetyNotice(UUID notice) {
        return SAFETY_NOTICE + "?notice=" + notice;
    }

    /** A page of one hospital; without its code, of the one that is meant. */
    public static String at(String page, Optional<String> site) {
        return site.map(code -> page + (page.contains("?") ? "&" : "?") + "site=" + code)
                .orElse(page);
    }

    /** A report of what broke, by its number. */
    public static String incident(UUID report) {
        return SAFETY_INCIDENT + "?report=" + report;
    }

    /** What a child's care cost, by the pseudonym that the hospital's costs know it by. */
    public static String costAccount(String site, String pseudonym) {
        return COSTS_ACCOUNT + "?site=" + site + "&account=" + pseudonym;
    }

    /** What a child's care cost, for whoever treats it. */
    public static String costs(UUID child) {
        return "child/" + child + "/costs";
    }

    /** Charges of the days as a file, ends included. */
    public static String costCharges(String kind, String site, LocalDate from, LocalDate until) {
        return "api/costs/charges." + kind + "?site=" + site + "&from=" + from + "&until=" + until;
    }

    /** What pathways cost in a year and the one before as a file. */
    public static String costPathways(String kind, String site, int year) {
        return "api/costs/pathways." + kind + "?site=" + site + "&year=" + year;
    }

    /** What broke in the child, to be reported. */
    public static String incidents(UUID child) {
        return "child/" + child + "/incidents";
    }

    /** A case put before colleagues. */
    public static String opinion(UUID thread) {
        return "opinion/" + thread;
    }

    /** A film of such a case, to be read blind. */
    public static String readOpinionFilm(UUID thread, UUID film) {
        return opinion(thread) + "/film/" + film;
    }

    /** What was asked about the child. */
    public static String childOpinions(UUID child) {
        return "child/" + child + "/opinions";
    }

    /** The form that puts the child's case before colleagues. */
    public static String askOpinion(UUID child) {
        return childOpinions(child) + "/ask";
    }

    /** The film room. */
    public static String film(UUID film) {
        return "film/" + film;
    }
}
