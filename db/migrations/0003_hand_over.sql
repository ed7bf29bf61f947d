CREATE TABLE `hand_overs` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`cut` text NOT NULL,
	`notes` text NOT NULL,
	`summary` text NOT NULL,
	`allowed` text NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `hand_overs_job` ON `hand_overs` (`job_id`);--> statement-breakpoint
CREATE TABLE `made_cuts` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`path` text NOT NULL,
	`result` text NOT NULL,
	`inspection` text NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `made_cuts_job` ON `made_cuts` (`job_id`,`created_at`);--> statement-breakpoint
ALTER TABLE `tasks` ADD `job_id` text REFERENCES jobs(id);--> statement-breakpoint
CREATE INDEX `tasks_job` ON `tasks` (`job_id`);