package org.espalier.access.internal;

import com.vaadin.flow.spring.security.NavigationAccessControlConfigurer;
import com.vaadin.flow.spring.security.RequestUtil;
import com.vaadin.flow.spring.security.VaadinSecurityConfigurer;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import org.espalier.access.AccessLog;
import org.espalier.access.Permissions;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.authorization.SingleResultAuthorizationManager;
import org.springframework.security.config.ObjectPostProcessor;
import org.springframework.security.config.annotation.authentication.builders.AuthenticationManagerBuilder;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserRequest;
import org.springframework.security.oauth2.client.userinfo.OAuth2UserService;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.access.intercept.RequestMatcherDelegatingAuthorizationManager;
import org.springframework.security.web.authentication.HttpStatusEntryPoint;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.authentication.logout.HeaderWriterLogoutHandler;
import org.springframework.security.web.context.SecurityContextHolderFilter;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter;
import org.springframework.security.web.header.writers.ClearSiteDataHeaderWriter.Directive;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.springframework.security.web.util.matcher.AnyRequestMatcher;

/** Two doors: archives with a site token, and people with a session. */
@Configuration
@EnableWebSecurity
@EnableConfigurationProperties(AccessProperties.class)
class SecurityConfiguration {

    private static final String LOGIN = "/login";
    private static final String FEATURES =
            "camera=(), microphone=(), geolocation=(), payment=(), usb=(), publickey-credentials-get=(self)";

    /** Without a session there is nothing a forged request could ride on. */
    @Bean
    @Order(2)
    SecurityFilterChain archives(
            HttpSecurity http,
            EndpointGuard guard,
            JdbcSignInRepository signIns,
            AccessProperties properties,
            AccessLog log,
            Clock clock)
            throws Exception {
        return http.securityMatcher("/dicom-web/**")
                .authorizeHttpRequests(requests -> requests.anyRequest().access(guard))
                .addFilterBefore(new SiteTokenFilter(signIns), UsernamePasswordAuthenticationFilter.class)
                .addFilterBefore(new RequestRate(properties.rate(), log, clock), AuthorizationFilter.class)
                .csrf(csrf -> csrf.disable())
                .headers(SecurityConfiguration::headers)
                .requestCache(cache -> cache.disable())
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .exceptionHandling(refusals -> refusals.authenticationEntryPoint((request, response, refusal) -> {
                            response.setHeader("WWW-Authenticate", "Bearer");
                            response.setStatus(HttpStatus.UNAUTHORIZED.value());
                        })
                        .accessDeniedHandler(
                                (request, response, refusal) -> response.setStatus(HttpStatus.FORBIDDEN.value())))
                .build();
    }

    /**
     * The filters of passkeys ask whoever holds the caller when they are made, so that the right one must stand before.
     */
    @Bean
    @Order(3)
    SecurityFilterChain people(
            HttpSecurity http,
            EndpointGuard guard,
            JdbcSignInRepository signIns,
            PasswordEncoder encoder,
            RequestUtil screens,
            AccessProperties properties,
            SessionRegister register,
            SecurityContextHolderStrategy holder,
            ObjectProvider<OAuth2UserService<OidcUserRequest, OidcUser>> staffBySubject,
            AccessLog log,
            Clock clock)
            throws Exception {
        SecurityContextHolder.setContextHolderStrategy(holder);
        var passwords = new DaoAuthenticationProvider(staffByLogin(signIns));
        passwords.setPasswordEncoder(encoder);
        http.getSharedObject(AuthenticationManagerBuilder.class).parentAuthenticationManager(null);
        staffBySubject.ifAvailable(staff -> http.oauth2Login(signOn -> signOn.loginPage(LOGIN)
                .failureHandler(new SignInRefusal(LOGIN))
                .userInfoEndpoint(people -> people.oidcUserService(staff))));
        return http.authenticationProvider(new ThrottledSignIn(passwords, signIns, clock))
                .addFilterBefore(
                        new SessionLimits(properties.session(), register, clock), SecurityContextHolderFilter.class)
                .addFilterBefore(new AuthorizationFilter(passkeys(guard)), AuthorizationFilter.class)
                .addFilterBefore(new PasskeyMistakes(), AuthorizationFilter.class)
                .addFilterBefore(new RequestRate(properties.rate(), log, clock), AuthorizationFilter.class)
                .authorizeHttpRequests(requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR)
                        .permitAll()
                        .requestMatchers("/api/**", "/webauthn/**", "/login/webauthn")
                        .access(guard))
                .exceptionHandling(refusals -> refusals.defaultAuthenticationEntryPointFor(
                                new HttpStatusEntryPoint(HttpStatus.UNAUTHORIZED),
                                PathPatternRequestMatcher.pathPattern("/api/**"))
                        .accessDeniedHandler(new StalePage(LOGIN)))
                .webAuthn(passkeys -> {})
                .with(VaadinSecurityConfigurer.vaadin(), vaadin -> vaadin.loginView(LOGIN, LOGIN)
                        .enableCsrfConfiguration(false))
                .csrf(csrf -> csrf.ignoringRequestMatchers(screens::isFrameworkInternalRequest))
                .formLogin(form -> form.failureHandler(new SignInRefusal(LOGIN)))
                .logout(logout -> logout.addLogoutHandler(register)
                        .addLogoutHandler(new HeaderWriterLogoutHandler(
                                new ClearSiteDataHeaderWriter(Directive.CACHE, Directive.COOKIES, Directive.STORAGE))))
                .headers(SecurityConfiguration::headers)
                .build();
    }

    /** Passkeys are begun by filters that stand before the guard of all requests, and so need it earlier. */
    private static AuthorizationManager<HttpServletRequest> passkeys(EndpointGuard guard) {
        return RequestMatcherDelegatingAuthorizationManager.builder()
                .add(PasskeyMistakes.PASSKEYS, guard)
                .add(AnyRequestMatcher.INSTANCE, SingleResultAuthorizationManager.permitAll())
                .build();
    }

    @Bean
    UserDetailsService staffByLogin(JdbcSignInRepository signIns) {
        return login -> signIns.byLogin(login).orElseThrow(() -> new UsernameNotFoundException("unknown"));
    }

    @Bean
    static NavigationAccessControlConfigurer navigationAccessControlConfigurer(Permissions permissions, AccessLog log) {
        return new NavigationAccessControlConfigurer().withNavigationAccessChecker(new RouteGuard(permissions, log));
    }

    /** Written before the answer, for a screen is answered by forwarding, which ends the answer unseen. */
    private static void headers(HeadersConfigurer<HttpSecurity> headers) {
        headers.withObjectPostProcessor(new ObjectPostProcessor<HeaderWriterFilter>() {
            @Override
            public <F extends HeaderWriterFilter> F postProcess(F filter) {
                filter.setShouldWriteHeadersEagerly(true);
                return filter;
            }
        });
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(ContentPolicy.ELSEWHERE))
                .frameOptions(frames -> frames.deny())
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                .crossOriginOpenerPolicy(opener -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(features -> features.policy(FEATURES));
    }
}
