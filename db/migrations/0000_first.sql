CREATE TABLE `changes` (
	`id` text PRIMARY KEY NOT NULL,
	`sequence` integer NOT NULL,
	`job_id` text,
	`label` text NOT NULL,
	`touched` text NOT NULL,
	`entries` text NOT NULL,
	`at` integer NOT NULL,
	`undone_at` integer,
	`left` integer DEFAULT 0 NOT NULL
);
--> statement-breakpoint
CREATE UNIQUE INDEX `changes_sequence` ON `changes` (`sequence`);--> statement-breakpoint
CREATE INDEX `changes_job` ON `changes` (`job_id`,`sequence`);--> statement-breakpoint
CREATE TABLE `clients` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`alias` text NOT NULL,
	`created_at` integer NOT NULL
);
--> statement-breakpoint
CREATE TABLE `folders` (
	`id` text PRIMARY KEY NOT NULL,
	`path` text NOT NULL,
	`clock_offset_minutes` integer DEFAULT 0 NOT NULL,
	`created_at` integer NOT NULL
);
--> statement-breakpoint
CREATE UNIQUE INDEX `folders_path_unique` ON `folders` (`path`);--> statement-breakpoint
CREATE TABLE `harnesses` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`harness` text NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `harnesses_job` ON `harnesses` (`job_id`);--> statement-breakpoint
CREATE TABLE `instruments` (
	`id` text PRIMARY KEY NOT NULL,
	`type` text NOT NULL,
	`maker` text,
	`model` text,
	`serial` text,
	`created_at` integer NOT NULL
);
--> statement-breakpoint
CREATE TABLE `jobs` (
	`id` text PRIMARY KEY NOT NULL,
	`number` integer NOT NULL,
	`title` text NOT NULL,
	`client_id` text,
	`instrument_id` text NOT NULL,
	`demo` integer DEFAULT false NOT NULL,
	`created_at` integer NOT NULL,
	`updated_at` integer NOT NULL,
	`deleted_at` integer,
	FOREIGN KEY (`client_id`) REFERENCES `clients`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`instrument_id`) REFERENCES `instruments`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `jobs_number` ON `jobs` (`number`);--> statement-breakpoint
CREATE INDEX `jobs_updated` ON `jobs` (`updated_at`);--> statement-breakpoint
CREATE TABLE `markers` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`take_id` text NOT NULL,
	`kind` text NOT NULL,
	`title` text NOT NULL,
	`note` text,
	`ms` integer NOT NULL,
	`end_ms` integer,
	`public` integer NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`take_id`) REFERENCES `takes`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `markers_job` ON `markers` (`job_id`);--> statement-breakpoint
CREATE INDEX `markers_take` ON `markers` (`take_id`,`ms`);--> statement-breakpoint
CREATE TABLE `meters` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`ranges` text NOT NULL,
	`created_at` integer NOT NULL
);
--> statement-breakpoint
CREATE TABLE `narration_lines` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`take_id` text NOT NULL,
	`start_ms` integer NOT NULL,
	`end_ms` integer NOT NULL,
	`text` text NOT NULL,
	`voice` text,
	`heard_text` text,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`take_id`) REFERENCES `takes`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `narration_lines_job` ON `narration_lines` (`job_id`);--> statement-breakpoint
CREATE INDEX `narration_lines_take` ON `narration_lines` (`take_id`,`start_ms`);--> statement-breakpoint
CREATE TABLE `outcomes` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`trace_id` text NOT NULL,
	`take_id` text,
	`ms` integer,
	`outcome` text NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`trace_id`) REFERENCES `traces`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`take_id`) REFERENCES `takes`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `outcomes_job` ON `outcomes` (`job_id`);--> statement-breakpoint
CREATE INDEX `outcomes_trace` ON `outcomes` (`trace_id`);--> statement-breakpoint
CREATE TABLE `proposals` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`take_id` text NOT NULL,
	`key` text NOT NULL,
	`start_ms` integer NOT NULL,
	`end_ms` integer NOT NULL,
	`heard` text NOT NULL,
	`decision` text NOT NULL,
	`promised_at` text,
	`record_id` text,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`take_id`) REFERENCES `takes`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `proposals_key` ON `proposals` (`job_id`,`key`);--> statement-breakpoint
CREATE INDEX `proposals_take` ON `proposals` (`take_id`,`start_ms`);--> statement-breakpoint
CREATE TABLE `readings` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`take_id` text,
	`ms` integer,
	`kind` text NOT NULL,
	`open` integer NOT NULL,
	`value_text` text,
	`unit` text NOT NULL,
	`base_value` real,
	`subject` text NOT NULL,
	`between` text,
	`basis` text NOT NULL,
	`meter_id` text,
	`details` text NOT NULL,
	`note` text,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`take_id`) REFERENCES `takes`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`meter_id`) REFERENCES `meters`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `readings_job` ON `readings` (`job_id`);--> statement-breakpoint
CREATE INDEX `readings_kind` ON `readings` (`kind`,`base_value`);--> statement-breakpoint
CREATE TABLE `recordings` (
	`id` text PRIMARY KEY NOT NULL,
	`folder_id` text NOT NULL,
	`path` text NOT NULL,
	`size_bytes` integer NOT NULL,
	`modified_at` integer NOT NULL,
	`state` text NOT NULL,
	`problem` text,
	`probe` text,
	`fingerprint` text,
	`peaks` text,
	`sound_read` integer DEFAULT false NOT NULL,
	`stills` text,
	`pictures_read` integer DEFAULT false NOT NULL,
	`hints` text,
	`viewing_copy` integer DEFAULT false NOT NULL,
	`crashes` integer DEFAULT 0 NOT NULL,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`folder_id`) REFERENCES `folders`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `recordings_place` ON `recordings` (`folder_id`,`path`);--> statement-breakpoint
CREATE TABLE `settings` (
	`key` text PRIMARY KEY NOT NULL,
	`value` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `takes` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`recording_id` text NOT NULL,
	`position` integer,
	`trim_start_ms` integer DEFAULT 0 NOT NULL,
	`trim_end_ms` integer,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`recording_id`) REFERENCES `recordings`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `takes_job` ON `takes` (`job_id`,`position`);--> statement-breakpoint
CREATE UNIQUE INDEX `takes_recording` ON `takes` (`job_id`,`recording_id`);--> statement-breakpoint
CREATE TABLE `tasks` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`recording_id` text,
	`payload` text NOT NULL,
	`state` text NOT NULL,
	`progress` real DEFAULT 0 NOT NULL,
	`message` text,
	`created_at` integer NOT NULL,
	`started_at` integer,
	`ended_at` integer,
	FOREIGN KEY (`recording_id`) REFERENCES `recordings`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `tasks_state` ON `tasks` (`state`,`created_at`);--> statement-breakpoint
CREATE INDEX `tasks_recording` ON `tasks` (`recording_id`);--> statement-breakpoint
CREATE TABLE `traces` (
	`id` text PRIMARY KEY NOT NULL,
	`job_id` text NOT NULL,
	`subject` text NOT NULL,
	`conductors` text NOT NULL,
	`shield` integer NOT NULL,
	`frame` integer NOT NULL,
	`rows` text NOT NULL,
	`assumed` text NOT NULL,
	`plan_id` text,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`job_id`) REFERENCES `jobs`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE INDEX `traces_job` ON `traces` (`job_id`);