package org.espalier.access.provider;

import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.source.ImmutableJWKSet;
import com.nimbusds.jose.jwk.source.JWKSource;
import com.nimbusds.jose.proc.SecurityContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.security.KeyPairGenerator;
import java.security.NoSuchAlgorithmException;
import java.security.interfaces.RSAPrivateKey;
import java.security.interfaces.RSAPublicKey;
import java.util.List;
import java.util.Map;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration;
import org.springframework.boot.tomcat.autoconfigure.servlet.TomcatServletWebServerAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.DispatcherServletAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.WebMvcAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.core.env.MapPropertySource;
import org.springframework.core.env.StandardEnvironment;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configuration.OAuth2AuthorizationServerConfiguration;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.oauth2.core.AuthorizationGrantType;
import org.springframework.security.oauth2.core.ClientAuthenticationMethod;
import org.springframework.security.oauth2.core.oidc.OidcScopes;
import org.springframework.security.oauth2.core.oidc.endpoint.OidcParameterNames;
import org.springframework.security.oauth2.jwt.JwtDecoder;
import org.springframework.security.oauth2.server.authorization.client.InMemoryRegisteredClientRepository;
import org.springframework.security.oauth2.server.authorization.client.RegisteredClient;
import org.springframework.security.oauth2.server.authorization.client.RegisteredClientRepository;
import org.springframework.security.oauth2.server.authorization.settings.AuthorizationServerSettings;
import org.springframework.security.oauth2.server.authorization.settings.ClientSettings;
import org.springframework.security.oauth2.server.authorization.token.JwtEncodingContext;
import org.springframework.security.oauth2.server.authorization.token.OAuth2TokenCustomizer;
import org.springframework.security.provisioning.InMemoryUserDetailsManager;
import org.springframework.security.web.SecurityFilterChain;

/** Everybody who signs in there by the password {@value PASSWORD} is who they say: the name is the subject. */
public final class TestProvider implements AutoCloseable {

    public static final String CLIENT = "espalier";
    public static final String SECRET = "of the client";
    public static final String PASSWORD = "provider";

    /** Whoever is called so gave several factors there. */
    public static final String WITH_SEVERAL_FACTORS = "subject-several";

    public static final String WITH_ONE_FACTOR = "subject-one";
    public static final String UNKNOWN = "subject-unknown";

    private final int port;
    private final ConfigurableApplicationContext running;

    /**
     * @param port where it answers
     * @param application where it sends people back to
     */
    public TestProvider(int port, int application) {
        this.port = port;
        var environment = new StandardEnvironment();
        environment
                .getPropertySources()
                .addFirst(new MapPropertySource(
                        "provider",
                        Map.of(
                                "server.port",
                                port,
                                "server.servlet.session.cookie.name",
                                "PROVIDER",
                                "provider.issuer",
                                issuer(port),
                                "provider.back",
                                "http://localhost:" + application + "/login/oauth2/code/house")));
        var program = new SpringApplication(Provider.class);
        program.setEnvironment(environment);
        program.setLogStartupInfo(false);
        program.setAdditionalProfiles("provider");
        running = program.run("--spring.config.location=optional:classpath:/no-such/", "--spring.main.banner-mode=off");
    }

    public static String issuer(int port) {
        return "http://127.0.0.1:" + port;
    }

    /** A port that is free now. */
    public static int freePort() {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String issuer() {
        return issuer(port);
    }

    @Override
    public void close() {
        running.close();
    }

    /** No configuration of this program, which looks for those beside it. */
    @EnableWebSecurity
    @ImportAutoConfiguration({
        TomcatServletWebServerAutoConfiguration.class,
        DispatcherServletAutoConfiguration.class,
        WebMvcAutoConfiguration.class,
        SecurityFilterAutoConfiguration.class
    })
    static class Provider {

        @Bean
        SecurityFilterChain everything(HttpSecurity http) throws Exception {
            return http.oauth2AuthorizationServer(server -> server.oidc(Customizer.withDefaults()))
                    .authorizeHttpRequests(requests -> requests.anyRequest().authenticated())
                    .formLogin(Customizer.withDefaults())
                    .build();
        }

        @Bean
        UserDetailsService people() {
            return new InMemoryUserDetailsManager(List.of(WITH_SEVERAL_FACTORS, WITH_ONE_FACTOR, UNKNOWN).stream()
                    .map(name -> User.withUsername(name)
                            .password("{noop}" + PASSWORD)
                            .build())
                    .toList());
        }

        @Bean
        RegisteredClientRepository clients(@Value("${provider.back}") String back) {
            return new InMemoryRegisteredClientRepository(RegisteredClient.withId(CLIENT)
                    .clientId(CLIENT)
                    .clientSecret("{noop}" + SECRET)
                    .clientAuthenticationMethod(ClientAuthenticationMethod.CLIENT_SECRET_BASIC)
                    .authorizationGrantType(AuthorizationGrantType.AUTHORIZATION_CODE)
                    .redirectUri(back)
                    .scope(OidcScopes.OPENID)
                    .clientSettings(
                            ClientSettings.builder().requireProofKey(true).build())
                    .build());
        }

        @Bean
        AuthorizationServerSettings settings(@Value("${provider.issuer}") String issuer) {
            return AuthorizationServerSettings.builder().issuer(issuer).build();
        }

        @Bean
        JWKSource<SecurityContext> keys() throws NoSuchAlgorithmException {
            var pair = KeyPairGenerator.getInstance("RSA").generateKeyPair();
            return new ImmutableJWKSet<>(new JWKSet(new RSAKey.Builder((RSAPublicKey) pair.getPublic())
                    .privateKey((RSAPrivateKey) pair.getPrivate())
                    .keyID("of the test")
                    .build()));
        }

        @Bean
        JwtDecoder decoder(JWKSource<SecurityContext> keys) {
            return OAuth2AuthorizationServerConfiguration.jwtDecoder(keys);
        }

        @Bean
        OAuth2TokenCustomizer<JwtEncodingContext> meansOfSignIn() {
            return context -> {
                if (context.getTokenType().getValue().equals(OidcParameterNames.ID_TOKEN)) {
                    boolean several = context.getPrincipal().getName().equals(WITH_SEVERAL_FACTORS);
                    context.getClaims().claim("amr", several ? List.of("pwd", "mfa") : List.of("pwd"));
                }
            };
        }
    }
}
