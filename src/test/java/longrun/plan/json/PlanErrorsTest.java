package longrun.plan.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longrun.Samples;
import longrun.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan can't hold is refused in words that say what to write instead; what it can is taken. */
class PlanErrorsTest {

    private static List<PlanError> errors(String rest) {
        return PlanReader.read("{'format':'longrun-plan/1',".replace('\'', '"') + rest.replace('\'', '"') + "}")
                .errors();
    }

    /** The most that can be, common practice: far beyond any house. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        'site':{'people':1000}                     | 'site':{'people':1000.5}                    | /site/people | 1000.5 is more than can be: write up to 1,000 people in one house, or look for a key too many
        'site':{'leadDays':366}                    | 'site':{'leadDays':367}                     | /site/leadDays | write up to 366 days from call to truck
        'tank':[{'count':1000}]                    | 'tank':[{'count':1001}]                     | /tank/0/count | write up to 1,000 tanks alike
        'use':{'pricePerGal':1000000}              | 'use':{'pricePerGal':1000001}               | /use/pricePerGal | as the price of a gallon
        'use':{'pricePerKwh':1000000}              | 'use':{'pricePerKwh':1000001}               | /use/pricePerKwh | as the price of a kilowatt-hour
        'use':{'others':[{},{'hoursPerDay':24}]}   | 'use':{'others':[{},{'hoursPerDay':24.1}]}  | /use/others/1/hoursPerDay | 24.1 is more than can be: write up to 24 hours in a day
        'use':{'hotWater':{'storage':{'cop':20}}}  | 'use':{'hotWater':{'storage':{'cop':20.1}}} | /use/hotWater/storage/cop | as a coefficient of performance
        'diversity':{'share':'100 %'}              | 'diversity':{'share':'100.1 %'}             | /diversity/share | write a share above 0 and up to 100 %
        'diversity':{'share':'0.1 %'}              | 'diversity':{'share':'0 %'}                 | /diversity/share | write a share above 0 and up to 100 %
        'fittingAllowance':'300 %'                 | 'fittingAllowance':'301 %'                  | /fittingAllowance | more than 300 % for fittings
        'fittingAllowance':'counted'               | 'fittingAllowance':'most'                   | /fittingAllowance | "most" is not a fitting allowance: write none, counted, or a share such as 20 %
        'appliances':[{'id':'a','input':'1 Btu/h'}] | 'appliances':[{'id':'a','input':'0 Btu/h'}] | /appliances/0/input | an input of zero fires nothing
        'use':{'others':[{'months':[1,12]}]}       | 'use':{'others':[{'months':[0,12]}]}        | /use/others/0/months | write months as whole numbers from 1 to 12
        'use':{'others':[{'months':[1]}]}          | 'use':{'others':[{'months':[13]}]}          | /use/others/0/months | write months as whole numbers from 1 to 12
        'use':{'others':[{'months':[12]}]}         | 'use':{'others':[{'months':[1.5]}]}         | /use/others/0/months | write months as whole numbers from 1 to 12
        'site':{'coldWater':{'temp':['50 degF']}}  | 'site':{'coldWater':{'temp':['50 degF','51 degF']}} | /site/coldWater/temp | write one temperature, or twelve, January first
        'use':{'hotWater':{'storage':{'roomTemp':'50 degF'}}} | 'use':{'hotWater':{'storage':{'roomTemp':['50 degF','51 degF']}}} | /use/hotWater/storage/roomTemp | write one temperature, or twelve, January first
        'availableSizes':{'steel':['1/2']}         | 'availableSizes':{'steel':[]}               | /availableSizes/steel | an empty list leaves no size to choose
        'availableSizes':{'steel':['1/2']}         | 'availableSizes':{'iron':['1/2']}           | /availableSizes/iron | "iron" is not among the choices: write one of steel, copper
        'regulators':[{'id':'R','outlet':'1 psi'}] | 'regulators':[{'id':'R','outlet':'0 psi'}]  | /regulators/0/outlet | "0 psi" is not a pressure to work with: write an outlet pressure above zero
        'regulators':[{'id':'R','allowedDrop':'1 psi'}] | 'regulators':[{'id':'R','allowedDrop':'0 psi'}] | /regulators/0/allowedDrop | "0 psi" is not a pressure to work with: write an allowed drop above zero
        'regulators':[{'id':'R','outlet':'2 psi','allowedDrop':'1.9 psi'}] | 'regulators':[{'id':'R','outlet':'2 psi','allowedDrop':'2 psi'}] | /regulators/0/allowedDrop | "2 psi" uses up the whole outlet pressure "2 psi": write a drop smaller than the outlet
        'prices':{'steel 1/2':3}                   | 'prices':{'brass 1/2':3}                    | /prices/brass 1~12 | "brass 1/2" names no material and size: write, for example, "steel 1/2"
        'prices':{'copper 1/2 nominal':3}          | 'prices':{'steel 5/8':3}                    | /prices/steel 5~18 | "5/8" is not a size of steel
        'sections':[{'id':'A','legs':['north 2 ft','north 1 ft']}] | 'sections':[{'id':'A','legs':['north 2 ft','south 1 ft']}] | /sections/0/legs/1 | "south 1 ft" turns straight back on "north 2 ft": write the way the pipe really goes
        'sections':[{'id':'A','legs':['east 2 ft','3 ft','west 1 ft']}] | 'sections':[{'id':'A','legs':['east 2 ft','3 ft','west 1 ft','east 1 ft']}] | /sections/0/legs/3 | "east 1 ft" turns straight back on "west 1 ft"
        'sections':[{'id':'A','legs':['12 ft']}]   | 'sections':[{'id':'A','legs':['left 12 ft']}] | /sections/0/legs/0 | "left 12 ft" starts with no direction of a leg
        'sections':[{'id':'A','chosenSize':'1/2'}] | 'sections':[{'id':'A','chosenSize':'half'}] | /sections/0/chosenSize | "half" is not a size of any material: enter the material, then a size such as 1/2, 3/4
        'sections':[{'id':'A','installedSize':'3'}] | 'sections':[{'id':'A','installedSize':'5'}] | /sections/0/installedSize | "5" is not a size of any material
        'readings':[{'minutes':1000000000000}]     | 'readings':[{'minutes':1000000000001}]      | /readings/0/minutes | is not a number a house can have here
        'sections':[{'id':'A','name':'x'}]         | 'sections':[{'id':' ','name':'x'}]          | /sections/0/id | " " is not a name: write a short text, such as "A"
        'sections':[{'id':'A'}]                    | 'sections':[{'id':7}]                       | /sections/0/id | 7 is not a name: write a short text
        'tank':{'count':2}                         | 'tank':{'count':-1}                         | /tank/count | -1 is not a number a house can have here: write a number from 0 up
        'use':{'pricePerGal':0}                    | 'use':{'pricePerGal':1e13}                  | /use/pricePerGal | is not a number a house can have here
        'use':{'pricePerGal':2.5}                  | 'use':{'pricePerGal':'2.5'}                 | /use/pricePerGal | "2.5" stands where a bare number is needed: write a number without quotes and unit
        'sections':[{'id':'A','fittings':{'tee-branch':10000}}] | 'sections':[{'id':'A','fittings':{'tee-branch':10001}}] | /sections/0/fittings/tee-branch | 10001 is not a count: write a whole number from 0 to 10,000
        'sections':[{'id':'A','fittings':{'tee-branch':2}}] | 'sections':[{'id':'A','fittings':{'tee-branch':1.5}}] | /sections/0/fittings/tee-branch | 1.5 is not a count
        'sections':[{'id':'A','fittings':{}}]      | 'sections':[{'id':'A','fittings':3}]        | /sections/0/fittings | 3 stands where an object is needed: write { "name": value }
        'code':{}                                  | 'code':3                                    | /code | 3 stands where an object is needed: write { ... } with its entries
        'tank':{'gauge':'100 %'}            | 'tank':{'gauge':'101 %'}             | /tank/gauge | "101 %" is more than a full tank: write 0 to 100 %
        'tank':{'gaugeDate':'2026-02-28'}          | 'tank':{'gaugeDate':'02/28/2026'}           | /tank/gaugeDate | "02/28/2026" is not written as a plan writes a date: write 2026-02-28
        'use':{'hotWater':{'draws':[{'start':'19:00'}]}} | 'use':{'hotWater':{'draws':[{'start':'7 pm'}]}} | /use/hotWater/draws/0/start | "7 pm" can't be taken: write a time of day, such as 19:00
        'useMemoryTables':true                     | 'useMemoryTables':'yes'                     | /useMemoryTables | "yes" is neither true nor false: write true or false without quotes
        'appliances':[{'id':'a','input':'9 kW'}]   | 'appliances':[{'id':'a','input':true}]      | /appliances/0/input | true stands where a text is needed: write a heat rate with its unit (Btu/h
        """)
    void whatCanBeIsTakenAndWhatCannotIsToldWithWhatToWrite(
            String taken, String refused, String pointer, String words) {
        assertThat(errors(taken)).isEmpty();
        assertThat(errors(refused)).singleElement().satisfies(e -> {
            assertThat(e.pointer()).isEqualTo(pointer);
            assertThat(e.message()).contains(words);
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        'sections':[{'id':'A','from':'Z'}]                          | /sections/0/from | "Z" is not a name of a section or a regulator: write one of A
        'regulators':[{'id':'R','fedBy':'Z'}]                       | /regulators/0/fedBy | "Z" is not a name of a section, or tank,: there is none in the plan yet
        'appliances':[{'id':'a','fedBy':'tank'}]                    | /appliances/0/fedBy | "tank" is not a name of a section: there is none in the plan yet
        'regulators':[{'id':'R','fedBy':'A'}],'sections':[{'id':'A'},{'id':'B','from':'A'}] | /regulators/0/fedBy | section "A" feeds other sections: give "R" a section of its own that leaves it
        'appliances':[{'id':'a','fedBy':'A'},{'id':'b','fedBy':'A'}],'sections':[{'id':'A'}] | /appliances/1/fedBy | section "A" already ends at "a": give "b" a section of its own
        'sections':[{'id':'A'}],'rooms':[{'id':'A'}]                | /rooms/0/id | "A" is already the name of /sections/0: write another
        'regulators':[{'id':'x'}],'appliances':[{'id':'x'}]         | /appliances/0/id | "x" is already the name of /regulators/0: write another
        'appliances':[{'id':'hot-water'}]                           | /appliances/0/id | "hot-water" is kept for the program's own use: write another name
        'appliances':[{'id':'a','room':'attic'}],'rooms':[{'id':'hall'}] | /appliances/0/room | "attic" is not a name of a room: write one of hall
        'sections':[{'id':'A','table':'T'}],'tubingTables':[{'name':'U'}] | /sections/0/table | "T" is not a name of a tubing table: write one of U
        'tubingTables':[{'name':'U'},{'name':'U'}]                  | /tubingTables/1/name | another table is named "U": write a name that differs
        'readings':[{'at':'Z'}]                                     | /readings/0/at | "Z" is not a name of any id of the plan: write one of
        'answers':[{'at':'Z'}]                                      | /answers/0/at | "Z" is not a name of any id of the plan: write one of
        'use':{'heating':[{'appliance':'Z'}]}                       | /use/heating/0/appliance | "Z" is not a name of an appliance: there is none in the plan yet
        'use':{'hotWater':{'onDemand':{'appliance':'Z'}}}           | /use/hotWater/onDemand/appliance | "Z" is not a name of an appliance
        'use':{'occasions':[{'firing':['a','Z']}]},'appliances':[{'id':'a'}] | /use/occasions/0/firing/1 | "Z" is not a name of an appliance: write one of a
        'regulators':[{'id':'R','fedBy':'A'}],'sections':[{'id':'A','from':'R'}] | /sections/0/from | the pipe comes back to itself here: write what really feeds this section
        'sections':[{'id':'A','from':'C'},{'id':'B','from':'A'},{'id':'C','from':'B'},{'id':'D','from':'C'}] | /sections/0/from | the pipe comes back to itself here
        """)
    void aNameOfNothingIsToldWithTheNamesThereAre(String plan, String pointer, String words) {
        assertThat(errors(plan)).singleElement().satisfies(e -> {
            assertThat(e.pointer()).isEqualTo(pointer);
            assertThat(e.message()).contains(words);
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        'regulators':[{'id':'R','fedBy':'tank'}],'sections':[{'id':'A','from':'R'},{'id':'B','from':'A'},{'id':'C','from':'A'}]
        'regulators':[{'id':'R','fedBy':'A'},{'id':'S','fedBy':'B'}],'sections':[{'id':'A'},{'id':'B'}]
        'appliances':[{'id':'a','fedBy':'A','room':'hall'}],'sections':[{'id':'A','table':'T'}],'rooms':[{'id':'hall'}],'tubingTables':[{'name':'T'}]
        'readings':[{'at':'tank'}],'answers':[{'at':'site'},{'at':'hot-water'},{'at':'plan'}]
        'use':{'heating':[{'appliance':'a'}],'others':[{'appliance':'a'}],'hotWater':{'onDemand':{'appliance':'a'}}},'appliances':[{'id':'a'}]
        'sections':[{'id':'A','material':'csst','installedSize':'EHD 23','table':'T'},{'id':'B','material':'csst','chosenSize':'27','table':'T'}],'tubingTables':[{'name':'T','csv':'length, 27 ,29'}]
        'availableSizes':{'csst':['29','23']},'tubingTables':[{'name':'T','csv':'length,29'}]
        'site':{'monthlyMeanTemp':['1 degF','2 degF','3 degF','4 degF','5 degF','6 degF','7 degF','8 degF','9 degF','10 degF','11 degF','12 degF']}
        'sections':[{'id':'A','installedSize':'1/2 nominal'},{'id':'B','chosenSize':'23'},{'id':'C','chosenSize':'1 CTS'}]
        'appliances':[{'id':'a','input':'40000 Btu/h','connection':[{'part':'shutoff','size':'1/2'}]}]
        'tank':{'gauge':'40 lb'}
        'tank':{'gauge':'18 kg '}
        """)
    void namesThatStandInThePlanAreTaken(String plan) {
        assertThat(errors(plan)).isEmpty();
    }

    /** A regulator leaves a section or the tank; two that feed one another are a loop of their own. */
    @Test
    void regulatorsThatFeedOneAnotherComeBackToThemselves() {
        assertThat(errors("'regulators':[{'id':'Q'},{'id':'R','fedBy':'S'},{'id':'S','fedBy':'R'}]"))
                .filteredOn(e -> e.message().contains("comes back to itself"))
                .extracting(PlanError::pointer)
                .containsExactly("/regulators/1/fedBy");
    }

    @Test
    void aColumnOfAnotherTableIsNoSizeOfASection() {
        String plan = "'sections':[{'id':'A','material':'csst','chosenSize':'27','table':'T'}],'tubingTables':"
                + "[{'name':'T','csv':'length,29'},{'name':'U','csv':'length,27'}]";
        assertThat(errors(plan)).extracting(PlanError::pointer).containsExactly("/sections/0/chosenSize");
        assertThat(errors(plan.replace("'length,29'", "'27,29'")))
                .as("the first column is the length")
                .extracting(PlanError::pointer)
                .containsExactly("/sections/0/chosenSize");
    }

    @Test
    void aLegThatCannotBeReadLeavesTheTurnsBesideItOpen() {
        assertThat(errors("'sections':[{'id':'A','legs':['north 2 ft','x','south 1 ft']}]"))
                .extracting(PlanError::pointer)
                .containsExactly("/sections/0/legs/1");
    }

    @Test
    void ofManyNamesTwelveAreTold() {
        StringBuilder sections = new StringBuilder();
        for (int i = 0; i < 12; i++) {
            sections.append(i == 0 ? "" : ",").append("{'id':'s").append(i).append("'}");
        }
        String twelve = errors("'sections':[" + sections + "],'appliances':[{'id':'a','fedBy':'Z'}]")
                .get(0)
                .message();
        assertThat(twelve).endsWith("s10, s11");
        String more = errors("'sections':[" + sections + ",{'id':'s12'}],'appliances':[{'id':'a','fedBy':'Z'}]")
                .get(0)
                .message();
        assertThat(more).endsWith("s10, s11, ...");
    }

    @ParameterizedTest
    @CsvSource({"40, false", "41, true"})
    void aLongNameIsShortened(int length, boolean cut) {
        String name = "n".repeat(length);
        List<PlanError> errors = errors("'sections':[{'id':'A','from':'" + name + "','material':'" + name + "'}]");
        assertThat(errors)
                .filteredOn(e -> e.pointer().endsWith("/from"))
                .singleElement()
                .satisfies(e -> assertThat(e.message()).startsWith("\"" + "n".repeat(40) + (cut ? "...\"" : "\"")));
    }

    @ParameterizedTest
    @CsvSource({"200, 0", "201, 1"})
    void aNameHasUpToTwoHundredCharacters(int length, int errors) {
        assertThat(errors("'sections':[{'id':'" + "n".repeat(length) + "'}]")).hasSize(errors);
    }

    @ParameterizedTest
    @CsvSource({"20000, 0", "20001, 1"})
    void aTextHasUpToTwentyThousandCharacters(int length, int errors) {
        assertThat(errors("'name':'" + "n".repeat(length) + "'"))
                .hasSize(errors)
                .allSatisfy(e ->
                        assertThat(e.message()).isEqualTo("a text of 20001 characters is too long: write it shorter"));
    }

    @Test
    void aBareNumberThatIsNoneIsSaidToBe() {
        assertThat(errors("'use':{'pricePerGal':'x'}"))
                .extracting(PlanError::kind)
                .containsExactly(PlanError.Kind.NOT_A_NUMBER);
        assertThat(errors("'use':{'pricePerGal':-1}"))
                .extracting(PlanError::kind)
                .containsExactly(PlanError.Kind.OTHER);
    }

    @Test
    void aNameMayBeWrittenAsANumber() {
        Plan plan = Samples.plan("{\"format\":\"longrun-plan/1\",\"name\":7}");
        assertThat(plan.name().findValue()).contains("7");
    }

    @Test
    void aThingWithoutANameIsCalledByItsPlace() {
        Plan plan = Samples.plan("{\"format\":\"longrun-plan/1\",\"sections\":[{},{\"from\":\"sections-0\"}]}");
        assertThat(plan.sections().get(1).id()).isEqualTo("sections-1");
    }

    @Test
    void noneStandsForAnEmptyListAndAnEmptyTable() {
        Plan plan = Samples.plan("{\"format\":\"longrun-plan/1\",\"sections\":\"none\",\"prices\":\"None\","
                + "\"site\":\"none\",\"fittingAllowance\":\"none\"}");
        assertThat(plan.sections()).isEmpty();
        assertThat(plan.prices()).isEmpty();
        assertThat(plan.site()).isEmpty();
        assertThat(plan.fittingAllowance().isKnown()).isTrue();
    }

    @Test
    void whatIsNoJsonIsToldWithItsLine() {
        assertThat(PlanReader.read("{\n\"a\": x}").errors().get(0).message())
                .startsWith("this is not JSON at line 2, column ")
                .endsWith("send a plan as one JSON object");
        assertThat(PlanReader.read("[]").errors().get(0).message())
                .isEqualTo("a plan is one JSON object: write { \"format\": \"longrun-plan/1\", ... }");
        assertThat(PlanReader.read("{\"format\":\"other\"}").errors().get(0).message())
                .isEqualTo("the format is missing or not one this reads: write \"longrun-plan/1\"");
        assertThat(PlanReader.read("{\"format\":1}").errors())
                .extracting(PlanError::pointer)
                .containsOnly("/format");
    }
}
