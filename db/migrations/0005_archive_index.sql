CREATE VIRTUAL TABLE `archive_words` USING fts5(`words`, content='', contentless_delete=1, detail=none, tokenize='porter unicode61 remove_diacritics 2');
--> statement-breakpoint
CREATE VIRTUAL TABLE `archive_said` USING fts5(`words`, content='', contentless_delete=1, detail=none, tokenize='porter unicode61 remove_diacritics 2');
--> statement-breakpoint
INSERT INTO `archive_stale` SELECT `id`, '', 1 FROM `jobs`;
--> statement-breakpoint
INSERT INTO `archive_stale` SELECT `job_id`, `id`, 1 FROM `takes`;
--> statement-breakpoint
CREATE TRIGGER `markers_insert_stale` AFTER INSERT ON `markers` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `markers_update_stale` AFTER UPDATE ON `markers` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `markers_delete_stale` AFTER DELETE ON `markers` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `readings_insert_stale` AFTER INSERT ON `readings` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `readings_update_stale` AFTER UPDATE ON `readings` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `readings_delete_stale` AFTER DELETE ON `readings` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `traces_insert_stale` AFTER INSERT ON `traces` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `traces_update_stale` AFTER UPDATE ON `traces` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `traces_delete_stale` AFTER DELETE ON `traces` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `outcomes_insert_stale` AFTER INSERT ON `outcomes` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `outcomes_update_stale` AFTER UPDATE ON `outcomes` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `outcomes_delete_stale` AFTER DELETE ON `outcomes` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `work_items_insert_stale` AFTER INSERT ON `work_items` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `work_items_update_stale` AFTER UPDATE ON `work_items` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `work_items_delete_stale` AFTER DELETE ON `work_items` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `parts_insert_stale` AFTER INSERT ON `parts` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `parts_update_stale` AFTER UPDATE ON `parts` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `parts_delete_stale` AFTER DELETE ON `parts` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `narration_lines_insert_stale` AFTER INSERT ON `narration_lines` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, NEW.`take_id`, 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `narration_lines_update_stale` AFTER UPDATE ON `narration_lines` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, NEW.`take_id`, 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `narration_lines_delete_stale` AFTER DELETE ON `narration_lines` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, OLD.`take_id`, 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `narration_lines_move_stale` AFTER UPDATE OF `take_id` ON `narration_lines` WHEN OLD.`take_id` IS NOT NEW.`take_id` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, OLD.`take_id`, 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `takes_insert_stale` AFTER INSERT ON `takes` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; INSERT INTO `archive_stale` VALUES (NEW.`job_id`, NEW.`id`, 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `takes_delete_stale` AFTER DELETE ON `takes` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; INSERT INTO `archive_stale` VALUES (OLD.`job_id`, OLD.`id`, 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `takes_update_stale` AFTER UPDATE OF `recording_id` ON `takes` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`job_id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `jobs_insert_stale` AFTER INSERT ON `jobs` BEGIN INSERT INTO `archive_stale` SELECT `id`, '', 0 FROM `jobs` WHERE `instrument_id` = NEW.`instrument_id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `jobs_update_stale` AFTER UPDATE OF `number`, `title`, `client_id`, `received_on`, `place`, `came_with` ON `jobs` BEGIN INSERT INTO `archive_stale` VALUES (NEW.`id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `jobs_move_stale` AFTER UPDATE OF `deleted_at`, `instrument_id` ON `jobs` BEGIN INSERT INTO `archive_stale` SELECT `id`, '', 0 FROM `jobs` WHERE `instrument_id` IN (OLD.`instrument_id`, NEW.`instrument_id`) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; INSERT INTO `archive_stale` SELECT `job_id`, `id`, 0 FROM `takes` WHERE `job_id` = NEW.`id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `jobs_delete_stale` AFTER DELETE ON `jobs` BEGIN INSERT INTO `archive_stale` VALUES (OLD.`id`, '', 0) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; INSERT INTO `archive_stale` SELECT `id`, '', 0 FROM `jobs` WHERE `instrument_id` = OLD.`instrument_id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `clients_update_stale` AFTER UPDATE OF `name`, `alias` ON `clients` BEGIN INSERT INTO `archive_stale` SELECT `id`, '', 0 FROM `jobs` WHERE `client_id` = NEW.`id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `instruments_update_stale` AFTER UPDATE ON `instruments` BEGIN INSERT INTO `archive_stale` SELECT `id`, '', 0 FROM `jobs` WHERE `instrument_id` = NEW.`id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `instruments_type_stale` AFTER UPDATE OF `type` ON `instruments` WHEN OLD.`type` IS NOT NEW.`type` BEGIN INSERT INTO `archive_stale` SELECT `job_id`, `id`, 0 FROM `takes` WHERE `job_id` IN (SELECT `id` FROM `jobs` WHERE `instrument_id` = NEW.`id`) ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `claims_insert_stale` AFTER INSERT ON `claims` BEGIN INSERT INTO `archive_stale` SELECT `id`, '', 0 FROM `jobs` WHERE `instrument_id` = NEW.`instrument_id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `claims_update_stale` AFTER UPDATE ON `claims` BEGIN INSERT INTO `archive_stale` SELECT `id`, '', 0 FROM `jobs` WHERE `instrument_id` = NEW.`instrument_id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `claims_delete_stale` AFTER DELETE ON `claims` BEGIN INSERT INTO `archive_stale` SELECT `id`, '', 0 FROM `jobs` WHERE `instrument_id` = OLD.`instrument_id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `recordings_update_stale` AFTER UPDATE OF `probe`, `modified_at` ON `recordings` BEGIN INSERT INTO `archive_stale` SELECT `job_id`, '', 0 FROM `takes` JOIN `recordings` ON `recordings`.`id` = `recording_id` WHERE `recording_id` = NEW.`id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
--> statement-breakpoint
CREATE TRIGGER `folders_update_stale` AFTER UPDATE OF `clock_offset_minutes` ON `folders` BEGIN INSERT INTO `archive_stale` SELECT `job_id`, '', 0 FROM `takes` JOIN `recordings` ON `recordings`.`id` = `recording_id` WHERE `folder_id` = NEW.`id` ON CONFLICT (`job_id`, `take_id`) DO UPDATE SET `at_leisure` = 0 WHERE `at_leisure`; END;
