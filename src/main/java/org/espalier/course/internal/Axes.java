package org.espalier.course.internal;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.espalier.kit.CourseModel;

/** Where days and values of a course lie on paper, in points. */
final class Axes {

    private static final double[] STEPS = {1, 2, 5, 10, 20, 50, 100};
    private static final double LEAST_TICK = 13;

    private Axes() {}

    /** Days across. */
    record Time(CourseModel model, double left, double right) {

        double x(LocalDate day) {
            double whole = Math.max(1, ChronoUnit.DAYS.between(model.from(), model.to()));
            return left + ChronoUnit.DAYS.between(model.from(), day) / whole * (right - left);
        }

        boolean isShown(LocalDate day) {
            return !day.isBefore(model.from()) && !day.isAfter(model.to());
        }

        /** The birthdays shown, as many as can be read. */
        List<LocalDate> birthdays() {
            var days = new ArrayList<LocalDate>();
            int every = everyYears();
            for (int age = 0; !model.birth().plusYears(age).isAfter(model.to()); age += every) {
                days.add(model.birth().plusYears(age));
            }
            return days.stream().filter(this::isShown).toList();
        }

        /** The first days of the years shown, as many as can be read. */
        List<LocalDate> years() {
            var days = new ArrayList<LocalDate>();
            int every = everyYears();
            for (int year = model.from().getYear(); year <= model.to().getYear(); year += every) {
                days.add(LocalDate.of(year, 1, 1));
            }
            return days.stream().filter(this::isShown).toList();
        }

        private int everyYears() {
            double year = x(model.from().plusYears(1)) - left;
            return Math.max(1, (int) Math.ceil(28 / year));
        }
    }

    /** Values of one lane, varus up whichever way the number runs. */
    record Values(CourseModel.Quantity quantity, double top, double bottom) {

        double y(double value) {
            double share = (value - quantity.min()) / (quantity.max() - quantity.min());
            return quantity.varus() == CourseModel.Varus.HIGHER
                    ? bottom - share * (bottom - top)
                    : top + share * (bottom - top);
        }

        /** The numbers written at the axis. */
        List<Double> ticks() {
            double perUnit = (bottom - top) / (quantity.max() - quantity.min());
            double step = DoubleStream.of(STEPS)
                    .filter(one -> one * perUnit >= LEAST_TICK)
                    .findFirst()
                    .orElse(STEPS[STEPS.length - 1]);
            var ticks = new ArrayList<Double>();
            for (double tick = Math.ceil(quantity.min() / step) * step; tick <= quantity.max(); tick += step) {
                ticks.add(tick);
            }
            return ticks;
        }
    }
}
