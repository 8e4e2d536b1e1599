/** A module that says it uses no other. */
@ApplicationModule(allowedDependencies = {})
package careless.modules.one;

import org.springframework.modulith.ApplicationModule;
