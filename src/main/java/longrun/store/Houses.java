package longrun.store;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jdbc.repository.query.Modifying;
import org.springframework.data.jdbc.repository.query.Query;
import org.springframework.data.repository.Repository;

/** The table of houses. Each update names the columns it changes, so that storing a text never restores an old name. */
interface Houses extends Repository<House, Long> {

    House save(House house);

    /** The house, locked until the transaction ends, since its row and its steps must agree. */
    @Query("select * from house where id = :id and deleted is null for update")
    Optional<House> lock(long id);

    /** A deleted house, locked until the transaction ends. */
    @Query("select * from house where id = :id and deleted is not null for update")
    Optional<House> lockDeleted(long id);

    List<House> findByDeletedIsNullOrderByChangedDescIdDesc();

    List<House> findByDeletedIsNotNullOrderByDeletedDescIdDesc();

    @Modifying
    @Query("update house set step = :step, version = :version, changed = :changed, mark = :checksum where id = :id")
    void move(long id, long version, int step, OffsetDateTime changed, long checksum);

    @Modifying
    @Query("update house set name = :name, mark = :checksum where id = :id and deleted is null")
    boolean rename(long id, String name, long checksum);

    @Modifying
    @Query("update house set deleted = :when, mark = :checksum where id = :id and deleted is null")
    boolean delete(long id, OffsetDateTime when, long checksum);

    @Modifying
    @Query("update house set deleted = null, mark = :checksum where id = :id and deleted is not null")
    boolean undelete(long id, long checksum);
}
