@echo off
rem Starts Contrapposto on Java 21 or newer: the one that came with it (java\), JAVA_HOME, then PATH. The jar itself looks further if that one is too old.
setlocal
set "HOME_DIR=%~dp0.."
set "JAVA_EXE=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA_EXE=%JAVA_HOME%\bin\java.exe"
if exist "%HOME_DIR%\java\bin\java.exe" set "JAVA_EXE=%HOME_DIR%\java\bin\java.exe"
"%JAVA_EXE%" -XX:+UseSerialGC -Djava.awt.headless=true -cp "%HOME_DIR%\lib\*" contrapposto.launch.Launch %*
exit /b %ERRORLEVEL%
