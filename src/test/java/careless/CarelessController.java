package careless;

import org.springframework.web.bind.annotation.RestController;

/** Breaks the rule of controllers: anybody may call it. */
@RestController
public class CarelessController {}
