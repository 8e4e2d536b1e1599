-- What operations of a hospital took since a day is read from the index alone: the demand of a year, without its other movements.
create index stock_movement_taken on stock_movement (from_site, recorded_at)
    include (id, product_id, holder, quantity, to_shelf, to_site) where holder is not null and reverses is null;

-- What expires first is found from the lots by their last day, and where they lie at a hospital.
create index stock_lot_by_last_day on stock_lot (expires_on, id);
create index stock_balance_of_lot on stock_balance (site_id, lot_id) where quantity > 0;
