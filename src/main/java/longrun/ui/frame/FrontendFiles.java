package longrun.ui.frame;

import java.util.List;
import java.util.Map;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.handler.SimpleUrlHandlerMapping;
import org.springframework.web.servlet.resource.ResourceHttpRequestHandler;

/** Serves style sheets and scripts so that a browser asks each time whether they have changed, since their names carry no version. */
@Configuration(proxyBeanMethods = false)
class FrontendFiles {

    @Bean
    ResourceHttpRequestHandler ownFilesHandler() {
        ResourceHttpRequestHandler handler = new ResourceHttpRequestHandler();
        handler.setLocations(List.of(new ClassPathResource("META-INF/resources/frontend/")));
        handler.setCacheControl(CacheControl.noCache());
        return handler;
    }

    @Bean
    HandlerMapping ownFilesMapping(ResourceHttpRequestHandler ownFilesHandler) {
        SimpleUrlHandlerMapping mapping =
                new SimpleUrlHandlerMapping(Map.of("/frontend/**", ownFilesHandler), Ordered.HIGHEST_PRECEDENCE);
        return mapping;
    }
}
