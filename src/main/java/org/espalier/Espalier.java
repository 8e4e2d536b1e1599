package org.espalier;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the application. */
@SpringBootApplication
public class Espalier {

    public static void main(String[] args) {
        SpringApplication.run(Espalier.class, args);
    }
}
