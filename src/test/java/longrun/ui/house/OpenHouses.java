package longrun.ui.house;

import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.github.mvysny.kaributesting.v10.spring.MockSpringServlet;
import com.vaadin.flow.component.UI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationContext;

/** The pages without a browser, with the real store in a folder of its own. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.MOCK)
public abstract class OpenHouses {

    private static final Routes ROUTES = new Routes().autoDiscoverViews("longrun");

    @Autowired
    private ApplicationContext context;

    @BeforeEach
    void openThePage() {
        MockVaadin.setup(UI::new, new MockSpringServlet(ROUTES, context, UI::new));
    }

    @AfterEach
    void closeThePage() {
        MockVaadin.tearDown();
    }
}
