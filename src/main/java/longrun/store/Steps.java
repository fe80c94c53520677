package longrun.store;

import org.jspecify.annotations.Nullable;
import org.springframework.data.jdbc.repository.query.Modifying;
import org.springframework.data.jdbc.repository.query.Query;
import org.springframework.data.repository.Repository;

/** The table of steps. */
interface Steps extends Repository<Step, Long> {

    Step save(Step step);

    @Query("select body, mark from step where house = :house and number = :number")
    @Nullable
    StoredText text(long house, int number);

    /** Where a house stands at a step, read at once: a key waits for it. */
    @Query("select (select body from step where house = :house and number = :number) as body,"
            + " (select body from step where house = :house and number = :number - 1) as before,"
            + " min(number) as earliest, max(number) as latest from step where house = :house")
    StandsAt standsAt(long house, int number);

    @Query("select min(number) as earliest, max(number) as latest from step where house = :house")
    Span span(long house);

    @Modifying
    @Query("update step set body = :body, mark = :mark where house = :house and number = :number")
    void replace(long house, int number, String body, long mark);

    @Modifying
    @Query("delete from step where house = :house and number > :number")
    void deleteAfter(long house, int number);

    @Modifying
    @Query("delete from step where house = :house and number < :number")
    void deleteBefore(long house, int number);
}
