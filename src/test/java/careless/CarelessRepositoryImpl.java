package careless;

import org.springframework.stereotype.Repository;

/** Breaks the rules of repositories and of names. */
@Repository
public class CarelessRepositoryImpl {}
