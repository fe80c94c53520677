package longrun.ui.house;

import longrun.draft.PlaceKind;
import longrun.ui.house.appliances.AppliancesPlace;
import longrun.ui.house.connections.ConnectionsPlace;
import longrun.ui.house.findings.FindingsPlace;
import longrun.ui.house.fuel.FuelView;
import longrun.ui.house.home.HousePlace;
import longrun.ui.house.hotwater.HotWaterView;
import longrun.ui.house.papers.PapersPlace;
import longrun.ui.house.route.RouteView;
import longrun.ui.house.tank.TankView;
import longrun.ui.house.valve.ValvePlace;
import longrun.ui.place.HousePage;
import longrun.ui.place.Place;

/** Makes each place of a house. */
final class PlaceMaker {

    private PlaceMaker() {}

    static Place make(PlaceKind kind, HousePage desk) {
        return switch (kind) {
            case HOUSE -> new HousePlace(desk);
            case APPLIANCES -> new AppliancesPlace(desk);
            case ROUTE -> new RouteView(desk);
            case CONNECTIONS -> new ConnectionsPlace(desk);
            case TANK -> new TankView(desk);
            case FUEL -> new FuelView(desk);
            case HOT_WATER -> new HotWaterView(desk);
            case FINDINGS -> new FindingsPlace(desk);
            case VALVE -> new ValvePlace(desk);
            case PAPERS -> new PapersPlace(desk);
        };
    }
}
