CREATE TABLE `archive_stale` (
	`job_id` text NOT NULL,
	`take_id` text NOT NULL,
	`at_leisure` integer NOT NULL
);
--> statement-breakpoint
CREATE UNIQUE INDEX `archive_stale_part` ON `archive_stale` (`job_id`,`take_id`);--> statement-breakpoint
CREATE INDEX `archive_stale_when` ON `archive_stale` (`at_leisure`);--> statement-breakpoint
CREATE TABLE `archive_takes` (
	`id` integer PRIMARY KEY NOT NULL,
	`take_id` text NOT NULL,
	`job_id` text NOT NULL,
	`job` integer NOT NULL,
	`day` text NOT NULL,
	`passages` integer NOT NULL
);
--> statement-breakpoint
CREATE UNIQUE INDEX `archive_takes_take` ON `archive_takes` (`take_id`);--> statement-breakpoint
CREATE INDEX `archive_takes_job` ON `archive_takes` (`job_id`);--> statement-breakpoint
CREATE TABLE `archive_things` (
	`id` integer PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`record_id` text NOT NULL,
	`take_id` text,
	`ms` integer,
	`marker_kind` text,
	`reading_kind` text,
	`base_value` real
);
--> statement-breakpoint
CREATE INDEX `archive_things_job` ON `archive_things` (`job_id`);--> statement-breakpoint
CREATE INDEX `archive_things_value` ON `archive_things` (`reading_kind`,`base_value`);--> statement-breakpoint
CREATE TABLE `archive_vocabulary` (
	`word` text PRIMARY KEY NOT NULL
);
--> statement-breakpoint
CREATE TABLE `saved_questions` (
	`id` text PRIMARY KEY NOT NULL,
	`title` text NOT NULL,
	`search` text NOT NULL,
	`created_at` integer NOT NULL
);
