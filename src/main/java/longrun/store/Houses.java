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

    /** A deleted house, held until the transaction ends. */
    @Query("select * from house where id = :id and deleted is not null for update")
    Optional<House> holdDeleted(long id);

    List<House> findByDeletedIsNullOrderByChangedDescIdDesc();

    List<House> findByDeletedIsNotNullOrderByDeletedDescIdDesc();

    @Modifying
    @Query("update house set step = :step, version = :version, changed = :changed, mark = :mark where id = :id")
    void move(long id, long version, int step, OffsetDateTime changed, long mark);

    @Modifying
    @Query("update house set name = :name, mark = :mark where id = :id and deleted is null")
    boolean rename(long id, String name, long mark);

    @Modifying
    @Query("update house set deleted = :when, mark = :mark where id = :id and deleted is null")
    boolean delete(long id, OffsetDateTime when, long mark);

    @Modifying
    @Query("update house set deleted = null, mark = :mark where id = :id and deleted is not null")
    boolean undelete(long id, long mark);
}
