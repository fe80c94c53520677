package longrun.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Names one after the other in a sentence. */
class ListWordsTest {

    @Test
    void theLastNameIsJoinedByAnd() {
        assertThat(ListWords.all(List.of())).isEmpty();
        assertThat(ListWords.all(List.of("A"))).isEqualTo("A");
        assertThat(ListWords.all(List.of("A", "B"))).isEqualTo("A and B");
        assertThat(ListWords.all(List.of("A", "B", "C"))).isEqualTo("A, B and C");
    }

    @Test
    void ofManyTheRestIsCounted() {
        List<String> names = List.of("A", "B", "C", "D", "E");
        assertThat(ListWords.most(names, 3)).isEqualTo("A, B, C and 2 more");
        assertThat(ListWords.most(names, 5)).isEqualTo("A, B, C, D and E");
    }
}
