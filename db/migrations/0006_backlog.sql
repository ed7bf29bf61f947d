CREATE TABLE `backlog_files` (
	`folder_id` text NOT NULL,
	`path` text NOT NULL,
	`place_folder_id` text NOT NULL,
	`place_path` text NOT NULL,
	`size_bytes` integer NOT NULL,
	`modified_at` integer NOT NULL,
	`probe` text,
	`fingerprint` text,
	`problem` text,
	`captions` text NOT NULL,
	PRIMARY KEY(`folder_id`, `path`),
	FOREIGN KEY (`folder_id`) REFERENCES `folders`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE TABLE `backlog_results` (
	`id` integer PRIMARY KEY NOT NULL,
	`backlog_id` text NOT NULL,
	`job_id` text,
	`joined` integer DEFAULT false NOT NULL,
	`home` text NOT NULL,
	`day` text,
	`takes` integer DEFAULT 0 NOT NULL,
	`lines` integer DEFAULT 0 NOT NULL,
	`changes` text DEFAULT '[]' NOT NULL,
	`problem` text,
	FOREIGN KEY (`backlog_id`) REFERENCES `backlogs`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
CREATE INDEX `backlog_results_backlog` ON `backlog_results` (`backlog_id`);--> statement-breakpoint
CREATE INDEX `backlog_results_job` ON `backlog_results` (`job_id`);--> statement-breakpoint
CREATE TABLE `backlogs` (
	`id` text PRIMARY KEY NOT NULL,
	`folder_id` text NOT NULL,
	`under` text NOT NULL,
	`looked_at` integer,
	`wanted` text,
	`look_task_id` text,
	`import_task_id` text,
	`undone_at` integer,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`folder_id`) REFERENCES `folders`(`id`) ON UPDATE no action ON DELETE cascade
);
--> statement-breakpoint
ALTER TABLE `tasks` ADD `at_leisure` integer DEFAULT false NOT NULL;