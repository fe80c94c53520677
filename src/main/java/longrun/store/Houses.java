package longrun.store;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jdbc.repository.query.Modifying;
import org.springframework.data.jdbc.repository.query.Query;
import org.springframework.data.repository.Repository;

/** The table of houses. Changes name their columns one by one, so that a save never puts an older name back. */
interface Houses extends Repository<House, Long> {

    House save(House house);

    /** The house, held until the transaction ends: its row and its steps belong together. */
    @Query("select * from house where id = :id and deleted is null for update")
    Optional<House> hold(long id);

    List<House> findByDeletedIsNullOrderByChangedDescIdDesc();

    List<House> findByDeletedIsNotNullOrderByDeletedDescIdDesc();

    @Modifying
    @Query("update house set step = :step, version = :version, changed = :changed where id = :id")
    void move(long id, long version, int step, OffsetDateTime changed);

    @Modifying
    @Query("update house set name = :name where id = :id and deleted is null")
    boolean rename(long id, String name);

    @Modifying
    @Query("update house set deleted = :when where id = :id and deleted is null")
    boolean delete(long id, OffsetDateTime when);

    @Modifying
    @Query("update house set deleted = null where id = :id and deleted is not null")
    boolean undelete(long id);
}
