-- What hangs in the rack is worked out anew when anything that it tells changes.
UPDATE `instruments` SET `client_id` = (SELECT `client_id` FROM `jobs` WHERE `instrument_id` = `instruments`.`id` AND `client_id` IS NOT NULL ORDER BY `number` DESC LIMIT 1) WHERE `client_id` IS NULL;
--> statement-breakpoint
UPDATE `jobs` SET `received_on` = date(`created_at` / 1000, 'unixepoch', 'localtime') WHERE `received_on` IS NULL;
--> statement-breakpoint
CREATE TRIGGER `takes_insert_kept` AFTER INSERT ON `takes` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `takes_update_kept` AFTER UPDATE ON `takes` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `takes_delete_kept` AFTER DELETE ON `takes` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `markers_insert_kept` AFTER INSERT ON `markers` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `markers_update_kept` AFTER UPDATE ON `markers` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `markers_delete_kept` AFTER DELETE ON `markers` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `readings_insert_kept` AFTER INSERT ON `readings` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `readings_update_kept` AFTER UPDATE ON `readings` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `readings_delete_kept` AFTER DELETE ON `readings` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `traces_insert_kept` AFTER INSERT ON `traces` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `traces_update_kept` AFTER UPDATE ON `traces` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `traces_delete_kept` AFTER DELETE ON `traces` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `outcomes_insert_kept` AFTER INSERT ON `outcomes` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `outcomes_update_kept` AFTER UPDATE ON `outcomes` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `outcomes_delete_kept` AFTER DELETE ON `outcomes` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `harnesses_insert_kept` AFTER INSERT ON `harnesses` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `harnesses_update_kept` AFTER UPDATE ON `harnesses` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `harnesses_delete_kept` AFTER DELETE ON `harnesses` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `proposals_insert_kept` AFTER INSERT ON `proposals` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `proposals_update_kept` AFTER UPDATE ON `proposals` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `proposals_delete_kept` AFTER DELETE ON `proposals` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `work_items_insert_kept` AFTER INSERT ON `work_items` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `work_items_update_kept` AFTER UPDATE ON `work_items` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `work_items_delete_kept` AFTER DELETE ON `work_items` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `parts_insert_kept` AFTER INSERT ON `parts` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = NEW.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `parts_update_kept` AFTER UPDATE ON `parts` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`job_id`, NEW.`job_id`); END;
--> statement-breakpoint
CREATE TRIGGER `parts_delete_kept` AFTER DELETE ON `parts` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` = OLD.`job_id`; END;
--> statement-breakpoint
CREATE TRIGGER `jobs_update_kept` AFTER UPDATE ON `jobs` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (OLD.`id`, NEW.`id`); END;
--> statement-breakpoint
CREATE TRIGGER `recordings_update_kept` AFTER UPDATE ON `recordings` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (select `job_id` from `takes` where `recording_id` = NEW.`id`); END;
--> statement-breakpoint
CREATE TRIGGER `clients_update_kept` AFTER UPDATE ON `clients` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (select `id` from `jobs` where `client_id` = NEW.`id`); END;
--> statement-breakpoint
CREATE TRIGGER `instruments_update_kept` AFTER UPDATE ON `instruments` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (select `id` from `jobs` where `instrument_id` = NEW.`id`); END;
--> statement-breakpoint
CREATE TRIGGER `claims_insert_kept` AFTER INSERT ON `claims` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (select `id` from `jobs` where `instrument_id` = NEW.`instrument_id`); END;
--> statement-breakpoint
CREATE TRIGGER `claims_delete_kept` AFTER DELETE ON `claims` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (select `id` from `jobs` where `instrument_id` = OLD.`instrument_id`); END;
--> statement-breakpoint
CREATE TRIGGER `claims_update_kept` AFTER UPDATE ON `claims` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (select `id` from `jobs` where `instrument_id` = NEW.`instrument_id`); END;
--> statement-breakpoint
CREATE TRIGGER `meters_update_kept` AFTER UPDATE ON `meters` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (select `job_id` from `readings` where `meter_id` = NEW.`id`); END;
--> statement-breakpoint
CREATE TRIGGER `folders_update_kept` AFTER UPDATE ON `folders` BEGIN DELETE FROM `kept_tickets` WHERE `job_id` IN (select `job_id` from `takes` join `recordings` on `recordings`.`id` = `recording_id` where `folder_id` = NEW.`id`); END;
