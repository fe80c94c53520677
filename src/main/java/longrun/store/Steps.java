package longrun.store;

import org.jspecify.annotations.Nullable;
import org.springframework.data.jdbc.repository.query.Modifying;
import org.springframework.data.jdbc.repository.query.Query;
import org.springframework.data.repository.Repository;

/** The table of steps. */
interface Steps extends Repository<Step, Long> {

    Step save(Step step);

    @Query("select body, mark as checksum from step where house = :house and number = :number")
    @Nullable
    StoredText text(long house, int number);

    /** A step with its neighbours, read in one query, since every key typed waits for it. */
    @Query("select (select body from step where house = :house and number = :number) as body,"
            + " (select body from step where house = :house and number = :number - 1) as before,"
            + " min(number) as earliest, max(number) as latest from step where house = :house")
    CurrentStep current(long house, int number);

    @Query("select min(number) as earliest, max(number) as latest from step where house = :house")
    StepRange span(long house);

    @Modifying
    @Query("update step set body = :body, mark = :checksum where house = :house and number = :number")
    void replace(long house, int number, String body, long checksum);

    @Modifying
    @Query("delete from step where house = :house and number > :number")
    void deleteAfter(long house, int number);

    @Modifying
    @Query("delete from step where house = :house and number < :number")
    void deleteBefore(long house, int number);
}
